import { describe, expect, it } from 'vitest';
import { solve } from '../../../engine/network/solve.ts';
import { pipeOptions } from '../../../engine/sizing/pipe-options.ts';
import { cold, fixture, ft, gpm, hot, job, networkOf, psi, run } from '../../jobs/written-job.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();
const none: ReadonlySet<string> = new Set();

const network = networkOf(
  job(
    [
      fixture('sink', 'kitchen-sink', { flow: gpm(6) }),
      fixture('basin', 'lavatory', { inlets: 'cold', flow: gpm(0.8) }),
    ],
    [
      run('S', 'street', { length: ft(20) }),
      run('K', 'S', { material: 'copper-l', length: ft(12.5), fittings: { ell: 2 }, end: cold('sink') }),
      run('B', 'S', { end: cold('basin') }),
      run('X', 'S', { size: '3/4', end: { device: 'arrester', size: 'A' } }),
      run('W', 'S', { end: { device: 'heater', type: 'storage' } }),
      run('H', 'W', { material: 'copper-l', end: hot('sink') }),
    ],
  ),
);
const solution = solve(network);
const sizesOf = (id: string, rules: Partial<Parameters<typeof pipeOptions>[2]> = {}): string[] =>
  pipeOptions(network, solution, { prices, keep: none, ...rules }).options[network.positionOf.get(id)!]!.map(
    ({ run: { size } }) => size,
  );

describe('pipe options', () => {
  it('are the sizes in stock whose velocity holds, smallest first', () => {
    // Copper type L bores 0.430, 0.545, 0.785 in. 6 gpm = 0.013368 ft3/s: over pi/4 d2 that is 13.3, 8.3 and 3.98 ft/s;
    // cold copper is held to 8 ft/s. 5/8 is seldom in stock.
    const speed = (bore: number): number => (6 * 231) / 1728 / 60 / ((Math.PI / 4) * (bore / 12) ** 2);
    expect([0.43, 0.545, 0.785].map((bore) => speed(bore) <= 8)).toEqual([false, false, true]);
    expect(sizesOf('K')).toEqual(['3/4', '1', '1-1/4', '1-1/2', '2', '2-1/2', '3', '4']);
    // Hot copper is held to 5 ft/s: 3.98 in 3/4 still holds.
    expect(sizesOf('H')[0]).toBe('3/4');
  });

  it('are no smaller than the supply of the fixture and the service may be', () => {
    // A lavatory may have 3/8; 0.8 gpm in the 0.350 in bore of PEX is 2.7 ft/s. The service is 3/4 at least.
    expect(sizesOf('B')[0]).toBe('3/8');
    expect(sizesOf('S')[0]).toBe('3/4');
  });

  it('cost pipe by the foot and fittings, and lose what the solver finds', () => {
    const { options } = pipeOptions(network, solution, { prices, keep: new Set(['K']) });
    const [own, ...others] = options[network.positionOf.get('K')!]!;
    expect(others).toEqual([]);
    const { pipe, fittings } = Object.fromEntries(
      ['pipe', 'fittings'].map((field) => [
        field,
        (
          prices.book[field as 'pipe' | 'fittings'] as readonly {
            material: string;
            size: string;
            kind?: string;
            perFoot?: string;
            each?: string;
          }[]
        ).find((one) => one.material === 'copper-l' && one.size === '1' && (one.kind ?? 'ell') === 'ell'),
      ]),
    );
    const cents = Math.round(100 * (12.5 * Number(pipe!.perFoot) + 2 * Number(fittings!.each)) + 1e-6);
    expect(own!.cost).toBe(cents);
    const at = network.positionOf.get('K')!;
    expect(own!.loss).toBeCloseTo(solution.pipeLoss[at]! + solution.fittingLoss[at]!, 6);
  });

  it('leave a run that carries nothing, and one that is kept, as drawn', () => {
    expect(sizesOf('X')).toEqual(['3/4']);
    expect(sizesOf('K', { keep: new Set(['K']) })).toEqual(['1']);
  });

  it('are of the materials asked for, the joint of another giving way', () => {
    const { options } = pipeOptions(network, solution, { prices, keep: none, materials: ['pex', 'cpvc'] });
    const joined = new Set(options[network.positionOf.get('K')!]!.map(({ run: { material } }) => material));
    expect([...joined].sort()).toEqual(['cpvc', 'pex']);
  });

  it('leave out pipe that the pressure is too much for', () => {
    // Polyethylene SDR-9 is rated 250 psi up to 73 F: with 251 psi by night nothing of it is left.
    const at = networkOf({
      ...job(
        [fixture('basin', 'lavatory', { inlets: 'cold' })],
        [run('B', 'street', { material: 'pe', end: cold('basin') })],
      ),
      supply: { kind: 'static', elevation: ft(0), low: psi(60), high: psi(251) },
    });
    expect(pipeOptions(at, solve(at), { prices, keep: none }).without).toEqual(['B']);
  });

  it('name what has no price, and the run that is left without a pipe', () => {
    const { pipe } = prices;
    const lacking = { ...prices, pipe: new Map([...pipe].filter(([key]) => !key.startsWith('copper-l'))) };
    const { missing, without } = pipeOptions(network, solution, { prices: lacking, keep: none });
    expect(without).toEqual(['K', 'H']);
    expect(missing).toContainEqual({ item: 'pipe', material: 'copper-l', size: '3/4' });
  });
});
