import type { PlacedDrawing } from '../../engine/drawing/placed.ts';
import type { Report } from '../../engine/network/report.ts';
import { figuresApart, figureWithUnit, signedPressure } from './figure.ts';
import { endWords, pipeWords } from './loss-step.ts';

/** The name of each view of a scheme's runs. */
export const viewNames = { riser: 'Riser', plan: 'Plan-wise tree' } as const;

/** What a drawing shows, in a sentence. */
export function drawingTitle({ network, solution }: Report, view: PlacedDrawing['view']): string {
  const { job, scheme, size } = network;
  const system = job.units;
  const start = figureWithUnit(solution.supplyPressure, 'pressure', system);
  const how = view === 'riser' ? 'each at its true height' : 'by developed length from the street';
  return `${viewNames[view]} of ${job.name}, ${scheme.name}: ${size} ${size === 1 ? 'run' : 'runs'} from the street at ${start}, ${how}.`;
}

/** The path to the worst fixture, run by run, with what is left there. */
export function worstPathText({ network, solution, worst }: Report, path: readonly number[]): string {
  if (worst === undefined) return 'No run ends at a fixture yet, so there is no worst path.';
  const { inlet, residual, margin } = worst;
  const system = network.job.units;
  const [left, needed] = figuresApart(residual, inlet.requiredPressure, 'pressure', system);
  const start = figureWithUnit(solution.supplyPressure, 'pressure', system);
  const names = path.map((at) => network.runs[at]!.id);
  return `The worst path goes from the street at ${start} through ${names.join(', ')} to ${inlet.fixture.name}, ${inlet.side}: ${left} left, ${signedPressure(margin, system)} against its need of ${needed}.`;
}

/** Which names found no room in a drawing; empty where all did. */
export function leftOutText({ network }: Report, { leftOut }: PlacedDrawing): string {
  const names = [...new Set(leftOut)].map((at) => network.runs[at]?.id ?? 'the street');
  if (names.length === 0) return '';
  return `There was no room for all that stands at ${names.join(', ')}; the table has them all.`;
}

/** One run of a drawing in a line: pipe, flow and what is left at its end. */
export function runText({ network, solution }: Report, at: number): string {
  const run = network.runs[at]!;
  const system = network.job.units;
  const end = endWords(run);
  return [
    `${run.id}: ${pipeWords(run)}`,
    run.length.typed,
    figureWithUnit(solution.flow[at]!, 'flow', system),
    `${figureWithUnit(solution.residual[at]!, 'pressure', system)} left`,
    ...(end === '' ? [] : [`ends at ${end}`]),
  ].join(', ');
}
