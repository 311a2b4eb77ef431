import { drawRiser, type PlacedDrawing, type Report } from '../../engine/index.ts';
import { drawingWords } from '../../views/text/drawing-words.ts';

/** A drawing of more runs could not be read, and would keep other requests waiting. */
export const mostDrawnRuns = 600;

/** The drawing of a solved scheme; a scheme that is too large for one is told in a sentence. */
export function drawScheme(report: Report): PlacedDrawing | string {
  const { size } = report.network;
  if (size > mostDrawnRuns)
    return `This scheme has ${size} runs; no more than ${mostDrawnRuns} are drawn on one sheet.`;
  return drawRiser(report, drawingWords(report));
}
