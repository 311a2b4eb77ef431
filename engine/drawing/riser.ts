import { pathTo } from '../network/path.ts';
import type { Report } from '../network/report.ts';
import { atEnds } from './at-ends.ts';
import { finishDrawing } from './finish-drawing.ts';
import { floors } from './floors.ts';
import { heightScales } from './height-scale.ts';
import { letterDrawing } from './letter-drawing.ts';
import { lineWeight } from './line-weight.ts';
import { fitOnPaper } from './paper.ts';
import type { DrawingWords, PlacedDrawing } from './placed.ts';
import { layRiser, type RiserTask } from './riser-layout.ts';
import { moved, streetBox } from './symbols.ts';

/**
 * The riser drawing of a solved scheme: every run's end at its **true height** to one scale, floors as lines at
 * theirs, the widths between the columns as the drawing needs them. Larger bores are drawn as heavier lines, the
 * path to the worst fixture lies on a pale band, and no text stands on another, on a pipe or on a symbol; what finds
 * no room is named in `leftOut`. Of the scales that suit the storeys, and of two ways to break
 * the texts at fixtures, those are taken that fit best on paper.
 */
export function drawRiser(report: Report, words: DrawingWords): PlacedDrawing {
  const { network, solution } = report;
  const weight = network.bore.map(lineWeight);
  const last = report.worst?.inlet.run;
  const task: RiserTask = { network, ends: atEnds(network, words), words, weight, last };
  const layout = heightScales(network)
    .flatMap((scale) => [layRiser(task, scale, 0), layRiser(task, scale, 1)])
    .reduce((best, next) =>
      fitOnPaper(next.width, next.height) > fitOnPaper(best.width, best.height) ? next : best,
    );
  const { scale, ends, street, symbols, ways } = layout;
  const lettered = letterDrawing(
    {
      network,
      ends,
      symbols,
      street: { at: street, box: moved(streetBox, street.x, street.y) },
      ways,
      weight,
      worst: worstRuns(report),
      last,
    },
    solution.flow,
    words,
  );
  const heights = network.job.levels.map((level) => -level.elevation.si * scale);
  const { lines, texts } = floors(heights, words, lettered.content, lettered.standing, lettered.pipeBoxes);
  return finishDrawing(
    {
      view: 'riser',
      pointsPerMetre: scale,
      datum: 0,
      ...lettered.parts,
      sheetLines: lines,
      texts: [...lettered.parts.texts, ...texts],
    },
    words,
  );
}

/** Runs from the street to the worst inlet; none where no fixture is served. */
export function worstRuns({ network, worst }: Report): ReadonlySet<number> {
  return new Set(worst === undefined ? [] : pathTo(network, worst.inlet.run));
}
