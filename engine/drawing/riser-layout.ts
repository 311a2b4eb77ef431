import type { Network } from '../network/network.ts';
import { type AtEnd, namesItsRun, symbolAt, wishedBox } from './at-ends.ts';
import { columns, leavesBar } from './columns.ts';
import { lineStep, textSize } from './place-texts.ts';
import type { Box, DrawingWords, Point } from './placed.ts';
import { moved } from './symbols.ts';
import { textWidth } from './text-width.ts';
import { ways } from './ways.ts';

/** Least length of a level pipe that needs no name, points. */
const leastLevel = 7;

/** What a riser is laid out from, at any scale. */
export interface RiserTask {
  readonly network: Network;
  readonly ends: readonly AtEnd[];
  readonly words: DrawingWords;
  readonly weight: ArrayLike<number>;
  /** The run at the worst fixture, whose text is bold. */
  readonly last: number | undefined;
}

/** Places of a riser's pipes and symbols; x is 0 at the street, y is 0 at the datum. */
export interface RiserLayout {
  readonly scale: number;
  /** With the wordings that room was kept for first. */
  readonly ends: readonly AtEnd[];
  readonly street: Point;
  readonly symbols: readonly (Box | undefined)[];
  readonly ways: readonly (readonly Point[])[];
  /** What it takes, texts at the ends of runs included. */
  readonly width: number;
  readonly height: number;
}

/**
 * Lays a riser out.
 *
 * @param scale points per metre of height
 * @param wording which of the wordings of the fixtures it keeps room for; the last where there are fewer
 */
export function layRiser(task: RiserTask, scale: number, wording: number): RiserLayout {
  const { network, weight } = task;
  const ends = task.ends.map((end) => startingAt(end, wording));
  const { parent } = network;
  const street = { x: 0, y: -network.supply.elevation.si * scale };
  const y = network.elevation.map((height) => -height * scale);
  const startY = Float64Array.from(parent, (above) => (above < 0 ? street.y : y[above]!));
  const boxes = ends.map((end, at) => boxesAtEnd(end, y[at]!, y[at]! > startY[at]!, at === task.last));
  const x = columns({
    parent,
    y,
    streetY: street.y,
    atEnd: boxes,
    ...roomForNames(task, startY, y),
    header: Uint8Array.from(ends, ({ shape }) => (shape === 'bar' ? 1 : 0)),
  });
  const headerEnd = headerEnds(task, x, y);
  const kept = boxes.flatMap((own, at) => own.map((box) => moved(box, x[at]!, 0)));
  return {
    scale,
    ends,
    street,
    symbols: ends.map((end, at) => symbolAt(end, { x: x[at]!, y: y[at]! }, headerEnd[at]!)),
    ways: ways({ parent, x, y, street, weight, headerEnd }, kept),
    ...extentOf(x, y, kept),
  };
}

function startingAt(end: AtEnd, wording: number): AtEnd {
  const first = Math.min(wording, end.wordings.length - 1);
  return first <= 0 ? end : { ...end, wordings: end.wordings.slice(first) };
}

/** Room at the end of a run: its symbol, and the text of a run that nothing goes on from. */
function boxesAtEnd(end: AtEnd, y: number, fromAbove: boolean, bold: boolean): Box[] {
  const text = end.last ? wishedBox(end, fromAbove, bold) : undefined;
  return [end.symbol, text].flatMap((box) => (box === undefined ? [] : [moved(box, 0, y)]));
}

/** Room for the names of runs that are not named at their ends: beside upright parts, else along level ones. */
function roomForNames(
  { network, ends, words, weight }: RiserTask,
  startY: ArrayLike<number>,
  y: ArrayLike<number>,
): { beside: Float64Array; along: Float64Array } {
  const beside = new Float64Array(network.size);
  const along = new Float64Array(network.size).fill(leastLevel);
  ends.forEach((end, at) => {
    if (namesItsRun(end)) return;
    const width = textWidth(words.run(at).at(-1) ?? '', textSize, false);
    if (Math.abs(y[at]! - startY[at]!) - 10 >= width) beside[at] = lineStep + weight[at]! / 2 + 2;
    else along[at] = width + 8;
  });
  return { beside, along };
}

/** How far the bar of each manifold reaches: to the last pipe that leaves it up or down. */
function headerEnds({ network, ends }: RiserTask, x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const reach = new Float64Array(network.size);
  network.parent.forEach((above, at) => {
    if (above < 0 || ends[above]!.shape !== 'bar' || !leavesBar(y[at]! - y[above]!)) return;
    reach[above] = Math.max(reach[above]!, x[at]! - x[above]!);
  });
  return reach;
}

function extentOf(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  boxes: readonly Box[],
): { width: number; height: number } {
  let [left, right, top, bottom] = [0, 0, Infinity, -Infinity];
  for (let at = 0; at < x.length; at++) {
    right = Math.max(right, x[at]!);
    top = Math.min(top, y[at]!);
    bottom = Math.max(bottom, y[at]!);
  }
  for (const box of boxes) {
    left = Math.min(left, box.left);
    right = Math.max(right, box.right);
    top = Math.min(top, box.top);
    bottom = Math.max(bottom, box.bottom);
  }
  return { width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
}
