import { lineBox, overlap } from './box.ts';
import type { Box, Point } from './placed.ts';

/** Width of the columns in which boxes are looked for, points. */
const column = 40;

/** What is on the sheet already, so that a text can be told whether a place is free. */
export interface Taken {
  readonly columns: Map<number, Box[]>;
}

export function nothingTaken(): Taken {
  return { columns: new Map() };
}

export function take({ columns }: Taken, box: Box): void {
  for (let at = Math.floor(box.left / column); at <= Math.floor(box.right / column); at++) {
    const boxes = columns.get(at);
    if (boxes === undefined) columns.set(at, [box]);
    else boxes.push(box);
  }
}

/** Takes the boxes of a line of several straight parts. */
export function takeWay(taken: Taken, way: readonly Point[], width: number): void {
  for (let at = 1; at < way.length; at++) take(taken, lineBox(way[at - 1]!, way[at]!, width));
}

/** Takes a slanting line by short pieces, so that no more room goes than the line needs. */
export function takeSlant(taken: Taken, from: Point, to: Point): void {
  const pieces = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
  const at = (share: number): Point => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
  for (let piece = 0; piece < pieces; piece++) {
    take(taken, lineBox(at(piece / pieces), at((piece + 1) / pieces), 0.8));
  }
}

export function isFree({ columns }: Taken, box: Box): boolean {
  for (let at = Math.floor(box.left / column); at <= Math.floor(box.right / column); at++) {
    if (columns.get(at)?.some((other) => overlap(box, other))) return false;
  }
  return true;
}
