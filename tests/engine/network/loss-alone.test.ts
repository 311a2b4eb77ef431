import { describe, expect, it } from 'vitest';
import { lossAlone } from '../../../engine/network/loss-alone.ts';
import { pathTo } from '../../../engine/network/path.ts';
import { pressureAlong } from '../../../engine/network/pressure-along.ts';
import { solve } from '../../../engine/network/solve.ts';
import { cold, fixture, ft, job, networkOf, psi, run } from '../../jobs/written-job.ts';

const runs = (size: string, set: number) => [
  run('first', 'street', { size: '3/4', length: ft(40), fittings: { ell: 2 } }),
  run('valve', 'first', { length: ft(1), end: { device: 'reducing-valve', set: psi(set), curve: [] } }),
  run('last', 'valve', { size, length: ft(60), fittings: { ell: 3, 'globe-valve': 1 }, end: cold('closet') }),
];
const house = (size: string, set = 100) =>
  networkOf(job([fixture('closet', 'water-closet-tank')], runs(size, set)));

describe('loss of one run alone', () => {
  it.each(['hazen-williams', 'darcy-weisbach'] as const)(
    'is what the solver finds for it by %s',
    (friction) => {
      const network = networkOf(
        job([fixture('closet', 'water-closet-tank')], runs('1/2', 100), { basis: { friction } }),
      );
      const solution = solve(network);
      for (const at of [0, 2]) {
        const alone = lossAlone(network, at, network.runs[at]!.size, solution.flow[at]!);
        expect(alone.pipe).toBeCloseTo(solution.pipeLoss[at]!, 6);
        expect(alone.fittings).toBeCloseTo(solution.fittingLoss[at]!, 6);
      }
    },
  );

  it('in another size is what the solver finds in that size', () => {
    const small = house('1/2');
    const large = house('1');
    const { flow, pipeLoss, fittingLoss } = solve(large);
    const alone = lossAlone(small, 2, '1', flow[2]!);
    expect(alone.pipe).toBeCloseTo(pipeLoss[2]!, 6);
    expect(alone.fittings).toBeCloseTo(fittingLoss[2]!, 6);
  });
});

describe('pressure along a changed path', () => {
  it('without a change is the residual', () => {
    const network = house('1/2');
    const solution = solve(network);
    expect(pressureAlong(network, solution, pathTo(network, 2), 2, {})).toBeCloseTo(solution.residual[2]!, 6);
  });

  it('with a larger pipe is the residual of the network that has it', () => {
    const network = house('1/2');
    const solution = solve(network);
    const change = lossAlone(network, 2, '1', solution.flow[2]!);
    expect(pressureAlong(network, solution, pathTo(network, 2), 2, change)).toBeCloseTo(
      solve(house('1')).residual[2]!,
      6,
    );
  });

  it('lets no gain before a reducing valve through it', () => {
    const network = house('1/2', 20);
    const solution = solve(network);
    const less = { pipe: 0, fittings: 0 };
    expect(solution.pipeLoss[0]!).toBeGreaterThan(0);
    expect(pressureAlong(network, solution, pathTo(network, 2), 0, less)).toBeCloseTo(
      solution.residual[2]!,
      6,
    );
  });
});
