import type { Box } from './placed.ts';

/** Height of one band of a profile, points. */
const band = 4;

/**
 * The outline of a block of a drawing: for each band of height, how far the block reaches to the left and to the
 * right of its own origin. Two blocks are set as close as the outlines allow, one above the other where they can.
 */
export interface Profile {
  readonly left: Float64Array;
  readonly right: Float64Array;
}

/** The bands between two heights of the sheet. */
export interface Bands {
  readonly top: number;
  readonly count: number;
}

export function bandsBetween(top: number, bottom: number): Bands {
  return { top, count: Math.max(1, Math.ceil((bottom - top) / band)) };
}

export function emptyProfile({ count }: Bands): Profile {
  return { left: new Float64Array(count).fill(Infinity), right: new Float64Array(count).fill(-Infinity) };
}

export function copyProfile({ left, right }: Profile): Profile {
  return { left: left.slice(), right: right.slice() };
}

/** Adds a box; what lies outside the bands counts to the nearest. */
export function cover(profile: Profile, bands: Bands, box: Box): void {
  const last = bands.count - 1;
  const first = Math.min(last, Math.max(0, Math.floor((box.top - bands.top) / band)));
  const end = Math.min(last, Math.max(first, Math.ceil((box.bottom - bands.top) / band) - 1));
  for (let at = first; at <= end; at++) {
    profile.left[at] = Math.min(profile.left[at]!, box.left);
    profile.right[at] = Math.max(profile.right[at]!, box.right);
  }
}

/** How far `next` has to move to the right to stand clear of `block` by `gap`; negative where it is clear already. */
export function toClear(block: Profile, next: Profile, gap: number): number {
  let move = -Infinity;
  for (let at = 0; at < block.right.length; at++) {
    const needed = block.right[at]! + gap - next.left[at]!;
    if (needed > move) move = needed;
  }
  return move;
}

/** Adds `next`, moved by `by`, to `block`. */
export function join(block: Profile, next: Profile, by: number): void {
  for (let at = 0; at < block.left.length; at++) {
    block.left[at] = Math.min(block.left[at]!, next.left[at]! + by);
    block.right[at] = Math.max(block.right[at]!, next.right[at]! + by);
  }
}

export function widthOf({ left, right }: Profile): number {
  let [least, most] = [Infinity, -Infinity];
  for (let at = 0; at < left.length; at++) {
    least = Math.min(least, left[at]!);
    most = Math.max(most, right[at]!);
  }
  return Math.max(0, most - least);
}
