import {
  explainInlet,
  explainRun,
  type Report,
  type Step,
  type Steps,
  writeOut,
} from '../../engine/index.ts';
import type { Job, UnitSystem } from '../../engine/job/job.ts';
import type { ExplainedStep } from '../../views/parts/explanation.tsx';
import { asRead } from '../../views/text/as-read.ts';
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
      return { title: `${owner}: ${step.formula.title}`, steps: [explained(step, job.units)] };
    }
  }
  return undefined;
}

function explained(step: Step, system: UnitSystem): ExplainedStep {
  return { step, written: writeOut(step), asRead: asRead(step.value, step.formula.result.unit, system) };
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
    .map((step) => explained(step, job.units));
  const show = (value: number) => figureWithUnit(value, 'pressure', job.units);
  const total = steps.reduce((sum, { step }) => sum + step.value, 0);
  return {
    title: `Loss of run ${run}, height apart`,
    sum: `${steps.map(({ step }) => show(step.value)).join(' + ')} = ${show(total)}`,
    steps,
  };
}
