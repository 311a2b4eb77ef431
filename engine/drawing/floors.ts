import { textBox } from './box.ts';
import { lineStep, textSize } from './place-texts.ts';
import type { Box, DrawingWords, PlacedText, SheetLine } from './placed.ts';
import { textWidth } from './text-width.ts';

/** Clear paper where a floor line gives way to a text or a symbol, points. */
const clear = 1.5;

export interface Floors {
  readonly lines: SheetLine[];
  readonly texts: PlacedText[];
}

/**
 * The line of each floor across the drawing at its true height, with its name at the left: as far in as nothing else
 * stands there. Lines give way to what stands on them; names of floors that are hardly apart in height are moved apart.
 *
 * @param heights y of each level of the job
 * @param content how far everything else reaches
 * @param standing boxes of texts and symbols
 * @param pipes boxes of pipes, which cross a line but not a name
 */
export function floors(
  heights: readonly number[],
  words: DrawingWords,
  content: Pick<Box, 'left' | 'right'>,
  standing: readonly Box[],
  pipes: readonly Box[],
): Floors {
  const names = heights.map((_, level) => words.floor(level));
  const left = leftOfNames(heights, names, content, [...standing, ...pipes]);
  const texts: PlacedText[] = [];
  const lines: SheetLine[] = [];
  let free = Infinity;
  const fromBelow = [...heights.keys()].sort((one, other) => heights[other]! - heights[one]!);
  for (const level of fromBelow) {
    const baseline = Math.min(heights[level]! - 2.5, free);
    free = baseline - lineStep;
    const start = { x: left, y: baseline };
    const text = names[level]!;
    texts.push({
      role: 'floor',
      run: -1,
      text,
      ...start,
      turned: false,
      size: textSize,
      bold: false,
      box: textBox(start, text, textSize, false, false),
    });
  }
  const all = [...standing, ...texts.map(({ box }) => box)];
  for (const y of new Set(heights)) {
    for (const [from, to] of openStretches(y, left, content.right + 6, all)) {
      lines.push({ what: 'floor', from: { x: from, y }, to: { x: to, y } });
    }
  }
  return { lines, texts };
}

/** Where the names of the floors begin: at the left edge of everything else where they are clear of it, else before. */
function leftOfNames(
  heights: readonly number[],
  names: readonly string[],
  content: Pick<Box, 'left' | 'right'>,
  standing: readonly Box[],
): number {
  const lefts = names.map((name, level) => {
    const y = heights[level]!;
    const near = standing.filter(({ top, bottom }) => top < y + 3 && bottom > y - 3 * lineStep);
    const first = near.reduce((least, box) => Math.min(least, box.left), content.right);
    return Math.min(content.left, first - textWidth(name, textSize, false) - 10);
  });
  return lefts.reduce((least, left) => Math.min(least, left), content.left);
}

/** The stretches of a level line on which nothing stands. */
function openStretches(y: number, left: number, right: number, boxes: readonly Box[]): [number, number][] {
  const closed = boxes
    .filter(({ top, bottom }) => top - clear < y && bottom + clear > y)
    .sort((one, other) => one.left - other.left);
  const open: [number, number][] = [];
  let at = left;
  for (const box of closed) {
    if (box.left - clear > at + 1) open.push([at, Math.min(right, box.left - clear)]);
    at = Math.max(at, box.right + clear);
  }
  if (at < right - 1) open.push([at, right]);
  return open;
}
