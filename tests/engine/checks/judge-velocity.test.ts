import { describe, expect, it } from 'vitest';
import { fromSI } from '../../../tables/units/definitions.ts';
import { fixture, gpm, hot, job, q, run, usualBasis } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

/** 0.4085 Q/d² ft/s in 1/2 in copper L (0.545 in): 8 ft/s at 5.816 gpm, 5 ft/s at 3.635 gpm. */
const drawing = (flow: number) =>
  quietBut({}, [], { fixtures: [fixture('closet', 'water-closet-tank', { flow: gpm(flow) })] });

describe('velocity-high', () => {
  it('over 8 ft/s in cold copper', () => {
    const [found, ...others] = findingsOf('velocity-high', drawing(5.83));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ severity: 'error', run: 'branch' });
    expect(fromSI(found!.velocity, 'ft/s')).toBeCloseTo((0.4085 * 5.83) / 0.545 ** 2, 2);
    expect(fromSI(found!.limit, 'ft/s')).toBeCloseTo(8, 9);
    const { mend } = found!;
    expect(mend).toMatchObject({ do: 'slower-pipe', run: 'branch', size: '3/4' });
    // 3/4 in copper L has a bore of 0.785 in.
    const slower = mend?.do === 'slower-pipe' ? fromSI(mend.velocity, 'ft/s') : 0;
    expect(slower).toBeCloseTo((0.4085 * 5.83) / 0.785 ** 2, 2);
  });

  it('not at 8 ft/s', () => expect(findingsOf('velocity-high', drawing(5.8))).toEqual([]));

  it('over 5 ft/s in hot copper', () => {
    const house = (flow: number) =>
      job(
        [fixture('sink', 'kitchen-sink', { inlets: 'hot', flow: gpm(flow) })],
        [
          run('service', 'street', { end: { device: 'heater', type: 'storage' } }),
          run('hot', 'service', { size: '1/2', material: 'copper-l', end: hot('sink') }),
        ],
      );
    expect(findingsOf('velocity-high', house(3.7))).toMatchObject([{ run: 'hot' }]);
    expect(findingsOf('velocity-high', house(3.6))).toEqual([]);
  });

  it('over the job’s own limit in place of the code’s', () => {
    const strict = { ...drawing(3), basis: { ...usualBasis, velocityCold: q(4, 'ft/s') } };
    expect(findingsOf('velocity-high', strict)).toMatchObject([{ run: 'branch' }]);
    expect(findingsOf('velocity-high', drawing(3))).toEqual([]);
  });
});
