import { readFileSync } from 'node:fs';
import { buildNetwork, type Job, pipeOptions, type Run, solve } from '../../engine/index.ts';
import { type CostCurve, leastCost, type SizingTask } from '../../engine/sizing/least-cost.ts';
import { sizeScheme } from '../../engine/sizing/size-scheme.ts';
import { indexPrices, type PriceIndex } from '../../engine/takeoff/index-prices.ts';
import { readPrices } from '../../server/document/read-prices.ts';
import { optimise, programme } from '../engine/sizing/mixed-integer.ts';
import { randomTask } from '../engine/sizing/random-task.ts';
import { buildingJob } from './building-job.ts';
import { figure, median, slope } from './figure.ts';
import { treeJob } from './tree-job.ts';

/** Milliseconds of one call: the median of several. */
function time(work: () => void, calls: number): number {
  const times: number[] = [];
  for (let call = 0; call < calls; call++) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  return median(times);
}

/** Least-cost sizing against a mixed-integer optimiser, and how it grows with the tree. */
export async function benchSizing(short: boolean): Promise<void> {
  await againstOptimiser(short);
  const read = await readPrices(
    readFileSync(new URL('../../examples/prices/invented-2026.json', import.meta.url)),
  );
  if (!read.ok) throw new Error(read.problems.join('; '));
  const prices = indexPrices(read.book);
  benchBuildings(prices, short);
  benchDeepTrees(prices, short);
}

/** The task with one pressure at the street: so many times the least that any sizes manage with. */
function atPressure(task: SizingTask, times: number): { task: SizingTask; available: number } {
  const available = leastCost({ ...task, tolerance: 2000 }).need.at(-1)! * times;
  return { task: { ...task, between: { most: available, least: available } }, available };
}

/**
 * Random trees of 150 runs at one street pressure. On the optimiser's side only its call counts, on ours all of the
 * sizing; the two costs must be the same.
 */
async function againstOptimiser(short: boolean): Promise<void> {
  await optimise(programme(randomTask(5, 1), 1e6));
  const ratios: number[] = [];
  for (let tree = 0; tree < (short ? 3 : 15); tree++) {
    // An odd seed places no reducing valve, so that every tree can be sized.
    const { task, available } = atPressure(randomTask(150, 2 * tree + 301), tree % 2 === 0 ? 1.02 : 1.3);
    let cost: number | undefined;
    const ours = time(() => {
      cost = leastCost(task).pick(available)?.cost;
    }, 9);
    const model = programme(task, available);
    const start = performance.now();
    const theirs = await optimise(model);
    ratios.push((performance.now() - start) / ours);
    if (cost === undefined || cost !== theirs) throw new Error(`tree ${tree}: ${cost} is not ${theirs}`);
  }
  figure('sizing_vs_milp', median(ratios), 'times_faster_at_150_runs');
  figure('sizing_vs_milp_least', Math.min(...ratios), 'times_faster_at_150_runs');
}

/** The whole curve of cost against street pressure for buildings, six sizes in stock for each run. */
function benchBuildings(prices: PriceIndex, short: boolean): void {
  const sizes = short ? [100, 1000, 4000] : [100, 316, 1000, 3162, 10_000];
  let longest = 0;
  const warm = pricedTask(buildingJob(1000), prices);
  time(() => leastCost(warm), 10);
  const points = sizes.map((size): readonly [number, number] => {
    const times = (short ? [1] : [1, 2, 3]).map((seed) => {
      const task = pricedTask(buildingJob(size, seed), prices);
      let curve: CostCurve | undefined;
      const spent = time(() => {
        curve = leastCost(task);
      }, 7);
      if (curve === undefined || curve.cost.length === 0)
        throw new Error(`building ${seed} of ${size} runs has no sizes`);
      longest = Math.max(longest, curve.longest);
      return spent;
    });
    if (size === 1000) figure('sizing_1000_runs_ms', median(times), 'ms_whole_curve');
    return [Math.log(size), Math.log(median(times))];
  });
  figure('sizing_growth_exponent', slope(points), `exponent_${sizes[0]}_to_${sizes.at(-1)}_runs`);
  figure('sizing_front_max', longest, `points_up_to_${sizes.at(-1)}_runs`);

  const built = buildNetwork(buildingJob(1000));
  if (!built.ok) throw new Error(JSON.stringify(built.defects.slice(0, 3)));
  const all = time(() => {
    const result = sizeScheme(built.network, { prices, keep: new Set() });
    if (!result.ok) throw new Error(`the building cannot be sized: ${result.unsized.why}`);
  }, 5);
  figure('sizing_1000_runs_with_prices_ms', all, 'ms_solve_options_prices_sizes');
}

function pricedTask(job: Job, prices: PriceIndex): SizingTask {
  const built = buildNetwork(job);
  if (!built.ok) throw new Error(JSON.stringify(built.defects.slice(0, 3)));
  const { network } = built;
  const solution = solve(network);
  const first = pipeOptions(network, solution, { prices, keep: new Set() });
  // What is too large for any pipe in stock stays as it is drawn.
  const { options } = pipeOptions(network, solution, { prices, keep: new Set(first.without) });
  return { network, flow: solution.flow, choices: options.map((list) => list.slice(0, 6)) };
}

/** An invented tree many runs deep, of copper, which is in stock up to 4 in. */
function deepJob(size: number): Job {
  const job = treeJob(size, 3);
  const inCopper = (run: Run): Run => ({ ...run, material: 'copper-l', size: '4' });
  return { ...job, schemes: job.schemes.map((scheme) => ({ ...scheme, runs: scheme.runs.map(inCopper) })) };
}

/**
 * Trees in which almost every run feeds one other, so that a path holds a large share of all runs: the number of
 * losses that a path can add up to grows with it, and with them the front. A tolerance bounds that.
 */
function benchDeepTrees(prices: PriceIndex, short: boolean): void {
  const sizes = short ? [100, 200, 400] : [100, 200, 400, 800, 1400, 2000];
  let longest = 0;
  const points = sizes.map((size): readonly [number, number] => {
    const { task } = atPressure(pricedTask(deepJob(size), prices), 1.1);
    const spent = time(
      () => {
        longest = Math.max(longest, leastCost(task).longest);
      },
      size > 1000 ? 3 : 7,
    );
    return [Math.log(size), Math.log(spent)];
  });
  figure('sizing_deep_growth_exponent', slope(points), `exponent_${sizes[0]}_to_${sizes.at(-1)}_runs`);
  figure('sizing_deep_front_max', longest, `points_at_one_pressure_up_to_${sizes.at(-1)}_runs`);

  const size = short ? 400 : 1400;
  const { task, available } = atPressure(pricedTask(deepJob(size), prices), 1.1);
  const costs = new Map<number, number>();
  const [exact, rough] = [0, 50].map((tolerance) =>
    time(() => {
      costs.set(tolerance, leastCost({ ...task, tolerance }).pick(available)!.cost);
    }, 3),
  );
  figure('sizing_deep_tolerance_cost_ratio', costs.get(50)! / costs.get(0)!, `ratio_50_Pa_${size}_runs`);
  figure('sizing_deep_tolerance_speedup', exact! / rough!, `times_50_Pa_${size}_runs`);
}
