import { describe, expect, it } from 'vitest';
import { hotReach } from '../../../engine/hotwater/hot-reach.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { at, fixture, ft, hot, job, networkOf, run } from '../../jobs/written-job.ts';

const heater = { device: 'heater', type: 'storage' } as const;

describe('reach of hot water', () => {
  it('adds up from the heater, and starts afresh at a second one', () => {
    const network = networkOf(
      job(
        [fixture('sink', 'kitchen-sink', { inlets: 'hot' })],
        [
          run('heater', 'street', { end: heater }),
          run('one', 'heater', { length: ft(10) }),
          run('booster', 'one', { length: ft(5), end: { device: 'heater', type: 'tankless' } }),
          run('two', 'booster', { length: ft(7), end: hot('sink') }),
        ],
      ),
    );
    const { length, volume } = hotReach(network);
    const feet = ['heater', 'one', 'booster', 'two'].map((id) => fromSI(at(network, length, id), 'ft'));
    expect(feet.map((value) => Math.round(value * 1e6) / 1e6)).toEqual([0, 10, 15, 7]);
    // 1 in PEX holds 0.0408 x 0.863² gal per foot.
    expect(fromSI(at(network, volume, 'two'), 'gal')).toBeCloseTo(7 * 0.0408 * 0.863 ** 2, 3);
  });
});
