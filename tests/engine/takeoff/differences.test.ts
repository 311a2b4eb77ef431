import { describe, expect, it } from 'vitest';
import { differences } from '../../../engine/takeoff/differences.ts';
import { takeOff } from '../../../engine/takeoff/take-off-network.ts';
import { networkOf } from '../../jobs/written-job.ts';
import { bathroom } from './bathroom.ts';
import { short } from './counted.ts';

describe('differences', () => {
  it('lists what is added and dropped where one run changes its size', () => {
    const [scheme] = bathroom.schemes;
    const runs = scheme!.runs.map((run) => (run.id === 'C3' ? { ...run, size: '1/2' } : run));
    const after = { ...bathroom, schemes: [{ ...scheme!, runs }] };
    const { added, dropped } = differences(takeOff(networkOf(bathroom)), takeOff(networkOf(after)));
    const words = (list: typeof added) =>
      list.map(({ article, by, before, after: now }) => `${by} ${short(article)} (${before} to ${now})`);
    // The tee behind C1 becomes 3/4 x 1/2 x 1/2, as the one behind C3 was, which becomes 1/2 throughout.
    expect(words(added)).toEqual([
      '3 pipe 1/2 copper-l (27 to 30)',
      '1 tee 1/2 x 1/2 x 1/2 copper-l (0 to 1)',
      '2 solder-joint 1/2 copper-l (22 to 24)',
      '1 hanger 1/2 copper-l (5 to 6)',
    ]);
    expect(words(dropped)).toEqual([
      '3 pipe 3/4 copper-l (36 to 33)',
      '1 tee 3/4 x 3/4 x 1/2 copper-l (1 to 0)',
      '2 solder-joint 3/4 copper-l (20 to 18)',
      '1 hanger 3/4 copper-l (8 to 7)',
    ]);
  });
});
