import { type Job, quickStart } from '../../../engine/index.ts';
import { ft, psi } from '../../jobs/written-job.ts';

/** An invented house of many baths: 192 runs as trunk and branch. */
export function manyBathsJob(): Job {
  const levels = [
    { name: 'Lower level', height: ft(10), fullBaths: 3, halfBaths: 1, laundries: 1 },
    { name: 'Main floor', height: ft(10), fullBaths: 3, halfBaths: 2, laundries: 1 },
    { name: 'Upper floor', height: ft(9), fullBaths: 5, halfBaths: 0, laundries: 1 },
  ];
  return quickStart({
    name: 'Many baths (invented)',
    units: 'us',
    profile: 'irc-2021',
    levels,
    kitchenLevel: 1,
    hoseBibbs: 4,
    iceMaker: true,
    rainShower: true,
    source: { kind: 'street', low: psi(70), high: psi(85) },
  });
}
