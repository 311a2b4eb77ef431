import { gridStep } from './grid-step.ts';

/** A stretch of values. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

/** Values to places on the sheet, and the round values to mark. */
export interface Scale {
  readonly at: (value: number) => number;
  readonly marks: readonly number[];
}

/**
 * A scale from `from` to `to` with about `count` round marks.
 *
 * @param span in SI or cents
 * @param perUnit how many of the reader's units one is
 */
export function scale(
  { least, most }: Span,
  perUnit: number,
  from: number,
  to: number,
  count: number,
): Scale {
  const width = most - least || 1;
  const step = gridStep(width * perUnit, count) / perUnit;
  const marks: number[] = [];
  // Adding nothing takes the sign from a zero that was rounded up.
  for (let mark = Math.ceil(least / step - 1e-9) + 0; mark * step <= most + step * 1e-9; mark++)
    marks.push(mark * step);
  return { at: (value) => tenth(from + ((value - least) / width) * (to - from)), marks };
}

/** To a tenth of the sheet's units: finer is not seen, and longer to send. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Moves labels apart so that each has `room`; the order stays. */
export function apart(wanted: readonly number[], room: number, most: number): readonly number[] {
  const order = wanted.map((_, index) => index).sort((one, other) => wanted[one]! - wanted[other]!);
  const placed = [...wanted];
  let last = Number.NEGATIVE_INFINITY;
  for (const index of order) {
    placed[index] = Math.max(wanted[index]!, last + room);
    last = placed[index]!;
  }
  let next = most + room;
  for (const index of order.reverse()) {
    placed[index] = Math.min(placed[index]!, next - room);
    next = placed[index]!;
  }
  return placed;
}
