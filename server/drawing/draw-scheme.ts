import { drawPlan, drawRiser, type PlacedDrawing, type Report } from '../../engine/index.ts';
import { drawingWords } from '../../views/text/drawing-words.ts';

/** A drawing of more runs could not be read, and would keep other requests waiting. */
export const mostDrawnRuns = 600;

export type DrawingView = PlacedDrawing['view'];

/** The view by its name; undefined where there is none of that name. */
export function viewNamed(name: string): DrawingView | undefined {
  return name === 'riser' || name === 'plan' ? name : undefined;
}

/**
 * The drawing of a solved scheme; a scheme that is too large for one is told in a sentence.
 *
 * @param view the tree laid flat for a building of one level, else the riser, where it is left out
 */
export function drawScheme(report: Report, view: DrawingView = usualView(report)): PlacedDrawing | string {
  const { size } = report.network;
  if (size > mostDrawnRuns)
    return `This scheme has ${size} runs; no more than ${mostDrawnRuns} are drawn on one sheet.`;
  const draw = { riser: drawRiser, plan: drawPlan }[view];
  return draw(report, drawingWords(report));
}

function usualView({ network }: Report): DrawingView {
  const heights = new Set(network.job.levels.map(({ elevation }) => elevation.si));
  return heights.size > 1 ? 'riser' : 'plan';
}
