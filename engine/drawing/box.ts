import { sansWidths } from '../../tables/lettering/sans-widths.ts';
import type { Box, Point } from './placed.ts';
import { textWidth } from './text-width.ts';

/** Whether two boxes share more than an edge. */
export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

export function grown(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

/** The box of a straight line of some width along an axis, or the box around a slanting one. */
export function lineBox(from: Point, to: Point, width: number): Box {
  const box = {
    left: Math.min(from.x, to.x),
    top: Math.min(from.y, to.y),
    right: Math.max(from.x, to.x),
    bottom: Math.max(from.y, to.y),
  };
  return grown(box, width / 2);
}

/** The box of a line of text whose baseline starts at `at`; `turned` reads upwards. */
export function textBox(at: Point, text: string, size: number, bold: boolean, turned: boolean): Box {
  const width = textWidth(text, size, bold);
  const up = sansWidths.ascent * size;
  const down = sansWidths.descent * size;
  return turned
    ? { left: at.x - up, top: at.y - width, right: at.x + down, bottom: at.y }
    : { left: at.x, top: at.y - up, right: at.x + width, bottom: at.y + down };
}

/** Whether a straight line meets a box. */
export function lineMeets(from: Point, to: Point, box: Box): boolean {
  // The part of the line, from 0 to 1, that is inside on both axes.
  let [enter, leave] = [0, 1];
  for (const [start, end, least, most] of [
    [from.x, to.x, box.left, box.right],
    [from.y, to.y, box.top, box.bottom],
  ] as const) {
    const step = end - start;
    if (step === 0) {
      if (start <= least || start >= most) return false;
      continue;
    }
    const [near, far] = [(least - start) / step, (most - start) / step].sort((one, other) => one - other);
    enter = Math.max(enter, near!);
    leave = Math.min(leave, far!);
  }
  return enter < leave;
}
