import { describe, expect, it } from 'vitest';
import type { Network } from '../../../engine/network/network.ts';
import { solve } from '../../../engine/network/solve.ts';
import { type HandMethodId, handMethods } from '../../../engine/sizing/hand-methods.ts';
import { pipeOptions } from '../../../engine/sizing/pipe-options.ts';
import { cold, fixture, ft, gpm, job, networkOf, psi, run } from '../../jobs/written-job.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();

function sizesBy(method: HandMethodId, network: Network): Record<string, string> {
  const solution = solve(network);
  const { options } = pipeOptions(network, solution, { prices, keep: new Set() });
  const chosen = handMethods[method]({ network, solution, options });
  return Object.fromEntries(chosen.map(({ run: { id, size } }) => [id, size]));
}

/** Bores of PEX SDR-9 by size, in, smallest first; 5/8 is seldom in stock. */
const bores = [
  ['3/8', 0.35],
  ['1/2', 0.475],
  ['3/4', 0.671],
  ['1', 0.863],
  ['1-1/4', 1.054],
  ['1-1/2', 1.244],
  ['2', 1.629],
] as const;
const feetPerSecond = (flow: number, bore: number): number =>
  (flow * 231) / 12 / 60 / ((Math.PI / 4) * bore ** 2);
/** Hazen-Williams with C = 150 for plastic pipe, psi/ft. */
const psiPerFoot = (flow: number, bore: number): number =>
  (4.52 * flow ** 1.852) / (150 ** 1.852 * bore ** 4.8704);

describe('hand methods', () => {
  const shower = (low: number): Network =>
    networkOf(
      job(
        [fixture('shower', 'shower', { inlets: 'cold', flow: gpm(5), pressure: psi(10) })],
        [
          run('S', 'street', { length: ft(60), rise: ft(10) }),
          run('C', 'S', { length: ft(40), end: cold('shower') }),
        ],
        { supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(60) } },
      ),
    );

  it('by velocity: the smallest that holds 8 ft/s and the least size', () => {
    const fit = bores.filter(([, bore]) => feetPerSecond(5, bore) <= 8).map(([size]) => size);
    expect(fit[0]).toBe('3/4');
    expect(sizesBy('velocity', shower(40))).toEqual({ S: '3/4', C: '3/4' });
  });

  it.each([16, 17, 20, 30])(
    'by uniform friction: what %i psi leave over the length and a half more',
    (low) => {
      // 10 ft of water at 60 F: 62.37 lb/ft3 / 144 = 0.4331 psi/ft.
      const gradient = (low - 4.331 - 10) / (100 * 1.5);
      const fit = bores.find(
        ([, bore]) => feetPerSecond(5, bore) <= 8 && psiPerFoot(5, bore) <= gradient,
      )![0];
      expect(sizesBy('uniform-friction', shower(low))).toEqual({ S: fit, C: fit });
    },
  );

  it('takes the largest where no pipe is enough', () => {
    expect(sizesBy('uniform-friction', shower(14))).toEqual({ S: '3', C: '3' });
  });

  const closets = (low: number): Network =>
    networkOf(
      job(
        [
          fixture('eight', 'water-closet-tank', { count: 8, pressure: psi(8) }),
          fixture('one', 'water-closet-tank', { pressure: psi(8) }),
        ],
        [
          run('S', 'street', { material: 'copper-l', length: ft(30), rise: ft(10) }),
          run('A', 'S', { material: 'copper-l', length: ft(20), end: cold('eight') }),
          run('B', 'S', { material: 'copper-l', length: ft(10), end: cold('one') }),
        ],
        { supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(60) } },
      ),
    );

  it('by the segment-free table: range of pressure, column of length, first row that holds the units', () => {
    // 50 ft x 1.2 = 60 ft. A private closet is 2.2 units: nine are 19.8, eight 17.6. From 40 psi (46 - 0.5 x 10) the
    // column of 60 ft has 2.5, 9.5, 32 for 1/2, 3/4 and 1 in.; from 30 psi it has 2, 7.5, 32.
    expect(sizesBy('segment-free-table', closets(46))).toEqual({ S: '1', A: '1', B: '1/2' });
    expect(sizesBy('segment-free-table', closets(44))).toEqual({ S: '1', A: '1', B: '3/4' });
  });
});
