import { explainInlet, explainRun, type Report, type Steps, writeOut } from '../../engine/index.ts';
import type { Job } from '../../engine/job/job.ts';
import type { ExplainedStep } from '../../views/parts/explanation.tsx';
import { figureWithUnit } from '../../views/text/figure.ts';

export interface FigureExplanation {
  readonly title: string;
  readonly sum?: string;
  readonly steps: readonly ExplainedStep[];
}

/** What the layout shows as the loss of a run is made of these. */
const lossParts = ['pipe-loss', 'fitting-loss', 'device-loss'];

/**
 * The story of one figure: `owner` is a run, a fixture, `street` or the water of a side; `quantity` is the figure's
 * name in the engine's steps, or `loss` for all that a run loses but height.
 */
export function explanationOf(
  job: Job,
  report: Report,
  owner: string,
  quantity: string,
): FigureExplanation | undefined {
  if (quantity === 'loss') return explainLoss(job, report, owner);
  for (const steps of sheets(report, owner)) {
    const step = steps.get(`${owner}.${quantity}`);
    if (step !== undefined) {
      return { title: `${owner}: ${step.formula.title}`, steps: [{ step, written: writeOut(step) }] };
    }
  }
  return undefined;
}

/** Where a step of this owner may stand. Steps of the street and the water stand with every run. */
function* sheets(report: Report, owner: string): Generator<Steps> {
  const run = explainRun(report, owner);
  if (run !== undefined) yield run;
  for (const side of ['cold', 'hot'] as const) {
    const inlet = explainInlet(report, owner, side);
    if (inlet !== undefined) yield inlet;
  }
  const [first] = report.network.runs;
  if (run === undefined && first !== undefined) yield explainRun(report, first.id)!;
}

function explainLoss(job: Job, report: Report, run: string): FigureExplanation | undefined {
  const sheet = explainRun(report, run);
  if (sheet === undefined) return undefined;
  const steps = lossParts
    .map((part) => sheet.get(`${run}.${part}`))
    .filter((step) => step !== undefined)
    .map((step) => ({ step, written: writeOut(step) }));
  const show = (value: number) => figureWithUnit(value, 'pressure', job.units);
  const total = steps.reduce((sum, { step }) => sum + step.value, 0);
  return {
    title: `Loss of run ${run}, height apart`,
    sum: `${steps.map(({ step }) => show(step.value)).join(' + ')} = ${show(total)}`,
    steps,
  };
}
