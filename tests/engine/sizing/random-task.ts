import { buildNetwork, type Job, type Run, solve } from '../../../engine/index.ts';
import { lossAlone } from '../../../engine/network/loss-alone.ts';
import type { PipeChoice, SizingTask, Tie } from '../../../engine/sizing/least-cost.ts';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { seeded, treeJob } from '../../bench/tree-job.ts';

const sizes = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'] as const;
const centsPerMetre = [131, 230, 410, 690, 990, 1580] as const;

/** An invented random tree with a meter on its service and, in every other one, a reducing valve farther on. */
function jobWithDevices(runs: number, seed: number): Job {
  const job = treeJob(runs, seed);
  const [scheme] = job.schemes;
  const feeds = new Set(scheme!.runs.map(({ from }) => from));
  const valveOn = scheme!.runs.find(({ id }, at) => at >= runs / 10 && feeds.has(id))?.id;
  const set = { typed: '45 psi', si: toSI(45, 'psi') };
  const withDevice = (run: Run): Run => {
    if (run.from === 'street') return { ...run, end: { device: 'meter', size: '2' } };
    return run.id === valveOn && seed % 2 === 0 ? { ...run, end: { device: 'reducing-valve', set } } : run;
  };
  return { ...job, schemes: [{ ...scheme!, runs: scheme!.runs.map(withDevice) }] };
}

/** A sizing task over an invented random tree: six sizes for each run, at invented prices; some runs fixed or tied. */
export function randomTask(runs: number, seed: number, tied = false): SizingTask {
  return taskOver(jobWithDevices(runs, seed), seed, tied);
}

/** A sizing task over any job, as {@link randomTask} makes it. */
export function taskOver(job: Job, seed: number, tied = false): SizingTask {
  const built = buildNetwork(job);
  if (!built.ok) throw new Error(JSON.stringify(built.defects));
  const { network } = built;
  const { flow } = solve(network);
  const random = seeded(seed + 7);
  const choices = network.runs.map((run, at): PipeChoice[] =>
    sizes.map((size, index) => {
      const { pipe, fittings } = lossAlone(network, at, size, flow[at]!);
      return {
        pipe: `pex ${size}`,
        inches: nominalSizes[size]!,
        cost: Math.round(run.length.si * centsPerMetre[index]! + 100 * (index + 1) * random()),
        loss: pipe + fittings,
      };
    }),
  );
  const some = choices.map((list) => (random() < 0.1 ? [list[3]!] : list));
  if (!tied) return { network, flow, choices: some };
  const ties = network.runs.map((): Tie => (random() < 0.15 ? 'same' : 'not-larger'));
  return { network, flow, choices, ties };
}
