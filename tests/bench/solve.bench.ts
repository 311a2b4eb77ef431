import { buildNetwork, type Network, solve } from '../../engine/index.ts';
import { figure, median, slope } from './figure.ts';
import { treeJob } from './tree-job.ts';

function networkOf(size: number): Network {
  const built = buildNetwork(treeJob(size));
  if (!built.ok) throw new Error(JSON.stringify(built.defects.slice(0, 3)));
  return built.network;
}

/** Milliseconds of one call, the median of several bursts. */
function time(work: () => void, bursts: number, calls: number): number {
  for (let warm = 0; warm < calls; warm++) work();
  const times: number[] = [];
  for (let burst = 0; burst < bursts; burst++) {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work();
    times.push((performance.now() - start) / calls);
  }
  return median(times);
}

let sink = 0;

/** Uses a result, so that no work is left out as unused. */
function keep(value: number): void {
  sink += value;
}

/** Solving against the least that friction alone costs: one power for each run. */
export function benchSolve(short: boolean): void {
  const network = networkOf(10_000);
  const { flow } = solve(network);
  const result = new Float64Array(network.size);
  const powers = (): void => {
    for (let at = 0; at < result.length; at++) result[at] = flow[at]! ** 1.852;
    keep(result[result.length >> 1]!);
  };
  const into = solve(network);
  const again = (): void => {
    keep(solve(network, into).residual[network.size - 1]!);
  };
  const fresh = (): void => {
    keep(solve(network).residual[network.size - 1]!);
  };
  const against = (solving: () => void): number => {
    const ratios: number[] = [];
    for (let round = 0; round < (short ? 5 : 15); round++) {
      ratios.push(time(solving, 3, 10) / time(powers, 3, 10));
    }
    return median(ratios);
  };
  figure('solve_vs_power_loop', against(fresh), 'ratio');
  figure('solve_in_place_vs_power_loop', against(again), 'ratio');

  const sizes = short ? [100, 1000, 10_000] : [100, 316, 1000, 3162, 10_000, 31_623, 100_000];
  const points = sizes.map((size): readonly [number, number] => {
    const tree = networkOf(size);
    const calls = Math.max(1, Math.round(100_000 / size));
    const spent = time(() => keep(solve(tree).residual[size - 1]!), 7, calls);
    return [Math.log(size), Math.log(spent)];
  });
  figure('solve_growth_exponent', slope(points), `exponent_${sizes[0]}_to_${sizes.at(-1)}_runs`);

  const built = sizes.map((size): readonly [number, number] => {
    const job = treeJob(size);
    const calls = Math.max(1, Math.round(10_000 / size));
    return [Math.log(size), Math.log(time(() => keep(buildNetwork(job).ok ? 1 : 0), 3, calls))];
  });
  figure('build_growth_exponent', slope(built), `exponent_${sizes[0]}_to_${sizes.at(-1)}_runs`);
  if (!Number.isFinite(sink)) throw new Error('the bench solved nothing');
}
