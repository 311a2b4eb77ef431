import { describe, expect, it } from 'vitest';
import { hotWaits } from '../../../engine/hotwater/hot-wait.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { cold, fixture, ft, gpm, hot, job, networkOf, run } from '../../jobs/written-job.ts';

const heater = { device: 'heater', type: 'storage' } as const;
/** Gallons in a foot of pipe of a bore in inches: area x 12 in over 231 in3. */
const gallonsPerFoot = (bore: number): number => ((Math.PI / 4) * bore ** 2 * 12) / 231;

const network = networkOf(
  job(
    [
      fixture('near', 'kitchen-sink', { inlets: 'hot', flow: gpm(2) }),
      fixture('far', 'lavatory', { inlets: 'hot', flow: gpm(0.5) }),
      fixture('closet', 'water-closet-tank'),
    ],
    [
      run('entry', 'street'),
      run('closet', 'entry', { size: '1/2', end: cold('closet') }),
      run('heater', 'entry', { length: ft(50), end: heater }),
      run('trunk', 'heater', { size: '3/4', length: ft(30) }),
      run('one', 'trunk', { size: '1/2', length: ft(10), end: hot('near') }),
      run('two', 'trunk', { size: '1/2', length: ft(20), end: hot('far') }),
    ],
  ),
);

describe('wait for hot water', () => {
  const waits = hotWaits(network);

  it('is told for every hot inlet, the longest first', () => {
    expect(waits.map(({ inlet: { fixture: one, side } }) => `${one.id} ${side}`)).toEqual([
      'far hot',
      'near hot',
    ]);
  });

  it.each([
    [0, 30, 20, 0.5],
    [1, 30, 10, 2],
  ])('is content over flow: number %i', (at, trunk, branch, flow) => {
    // PEX SDR-9: 0.671 in. in 3/4, 0.475 in. in 1/2.
    const gallons = trunk * gallonsPerFoot(0.671) + branch * gallonsPerFoot(0.475);
    const wait = waits[at]!;
    expect(fromSI(wait.length, 'ft')).toBeCloseTo(trunk + branch, 9);
    expect(fromSI(wait.volume, 'gal')).toBeCloseTo(gallons, 9);
    expect(wait.seconds).toBeCloseTo((60 * gallons) / flow, 6);
  });
});
