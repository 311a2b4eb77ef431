import type { Network } from '../network/network.ts';
import type { Report } from '../network/report.ts';
import { type AtEnd, atEnds, namesItsRun, symbolAt } from './at-ends.ts';
import { textBox } from './box.ts';
import { finishDrawing } from './finish-drawing.ts';
import { lengthAxis } from './length-axis.ts';
import { type Laid, letterDrawing } from './letter-drawing.ts';
import { lineWeight } from './line-weight.ts';
import { fitOnPaper } from './paper.ts';
import { lineStep, textSize } from './place-texts.ts';
import type { DrawingWords, PlacedDrawing, PlacedText, Point, SheetLine } from './placed.ts';
import { worstRuns } from './riser.ts';
import { moved, streetBox } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** From one row to the next: two lines at an end, and the name of a run over its pipe. */
const rowStep = 2 * lineStep + 6;
/** What the longest path may take across, points. */
const widths = [300, 450, 600, 900];

/**
 * The tree of a solved scheme laid flat, for a building of one level: to the right by developed length from the
 * street, so that all ends above one another are as far along the pipe; a row for each end. Where a short run has no
 * room for what stands on it the scale is stretched, for all rows alike; marks tell the lengths.
 */
export function drawPlan(report: Report, words: DrawingWords): PlacedDrawing {
  const { network, solution } = report;
  const weight = network.bore.map(lineWeight);
  const ends = atEnds(network, words);
  const reach = reachOf(network);
  const longest = reach.reduce((one, other) => Math.max(one, other));
  const row = rowsOf(network);
  const height = Math.max(...row) * rowStep;
  const task = { parent: network.parent, reach, least: roomOf(network, ends, words) };
  const { scale, place } = widths
    .map((width) => ({ scale: width / longest, place: lengthAxis(task, width / longest) }))
    .reduce((best, next) =>
      fitOnPaper(next.place(longest), height) > fitOnPaper(best.place(longest), height) ? next : best,
    );
  const end = (at: number): Point => ({ x: place(reach[at]!), y: row[at]! * rowStep });
  const street = { x: 0, y: 0 };
  const laid: Laid = {
    network,
    ends,
    symbols: ends.map((one, at) => symbolAt(one, end(at), 0)),
    street: { at: street, box: moved(streetBox, street.x, street.y) },
    ways: network.runs.map((_, at) =>
      wayTo(network.parent[at]! < 0 ? street : end(network.parent[at]!), end(at)),
    ),
    weight,
    worst: worstRuns(report),
    last: report.worst?.inlet.run,
    ahead: true,
  };
  const { parts, standing, pipeBoxes } = letterDrawing(laid, solution.flow, words);
  const top = [...standing, ...pipeBoxes].reduce((least, box) => Math.min(least, box.top), 0);
  const marks = marksAt(longest, words, place, top - 6);
  return finishDrawing(
    {
      view: 'plan',
      pointsPerMetre: scale,
      datum: 0,
      ...parts,
      sheetLines: marks.lines,
      texts: [...parts.texts, ...marks.texts],
    },
    words,
  );
}

/** Developed length from the street to the end of each run, m. */
function reachOf({ parent, length, size }: Network): Float64Array {
  const reach = new Float64Array(size);
  for (let at = 0; at < size; at++) reach[at] = (parent[at]! < 0 ? 0 : reach[parent[at]!]!) + length[at]!;
  return reach;
}

/** The row of each run: the first that a run feeds goes on in its row, each other has rows of its own below. */
function rowsOf({ parent, size }: Network): number[] {
  const row: number[] = [];
  let rows = 0;
  for (let at = 0; at < size; at++) row.push(parent[at] === at - 1 ? (row[at - 1] ?? 0) : ++rows);
  return row;
}

/** Least length of each run on paper: for its name, and for half of the symbols at both its ends. */
function roomOf({ parent, size }: Network, ends: readonly AtEnd[], words: DrawingWords): Float64Array {
  const half = (at: number): number => ends[at]?.symbol?.right ?? 2;
  return Float64Array.from({ length: size }, (_, at) => {
    const name = namesItsRun(ends[at]!) ? 8 : textWidth(words.run(at).at(-1) ?? '', textSize, true) + 10;
    return half(parent[at]!) + name + half(at);
  });
}

/** Along the pipe before it, down or up to its own row, then onwards. */
function wayTo(from: Point, to: Point): Point[] {
  return from.y === to.y ? [from, to] : [from, { x: from.x, y: to.y }, to];
}

/** The scale above the rows: a line with a stroke and a length at each round step. */
function marksAt(
  longest: number,
  words: DrawingWords,
  place: (length: number) => number,
  y: number,
): { lines: SheetLine[]; texts: PlacedText[] } {
  const step = words.markStep(longest);
  const lines: SheetLine[] = [{ what: 'mark', from: { x: 0, y }, to: { x: place(longest), y } }];
  const texts: PlacedText[] = [];
  let free = -Infinity;
  for (let count = 0; count * step <= longest; count++) {
    const x = place(count * step);
    lines.push({ what: 'mark', from: { x, y: y - 4 }, to: { x, y } });
    const text = words.mark(count * step);
    const start = { x: x - textWidth(text, textSize, false) / 2, y: y - 7 };
    const box = textBox(start, text, textSize, false, false);
    if (box.left < free) continue;
    free = box.right + 4;
    texts.push({ role: 'mark', run: -1, text, ...start, turned: false, size: textSize, bold: false, box });
  }
  return { lines, texts };
}
