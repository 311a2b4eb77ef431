import type { FittingKind } from '../../tables/pipe/names.ts';
import type { RunEnd } from '../job/job.ts';
import type { Axis, Point } from './grid.ts';

/** A stretch of pipe in a drawing: from the end of the stretch before it, by its corners, to its own end. */
export interface Stretch {
  /** What its runs are called, without their number: `C-U` gives `C-U1`. */
  readonly name: string;
  /** At least one; each differs from the one before it along one axis at most. The last is the end. */
  readonly corners: readonly Point[];
  /** Valves and other fittings in the line; ells and tees are counted from the corners and the junctions. */
  readonly fittings?: readonly FittingKind[];
  readonly end?: RunEnd;
  readonly note?: string;
  /** Developed length in steps where the plan does not say the way; two turns are taken with it. */
  readonly length?: number;
  /** Tube that is bent at its corners: one ell only, where it leaves the wall at the fixture. */
  readonly bent?: boolean;
  readonly behind: readonly Stretch[];
}

/** The corners on a way that goes along one axis after the other; axes along which nothing is to go are left out. */
export function route(from: Point, to: Point, axes: readonly Axis[]): Point[] {
  const corners: Point[] = [];
  let at = from;
  for (const axis of axes) {
    if (at[axis] === to[axis]) continue;
    at = { ...at, [axis]: to[axis] };
    corners.push(at);
  }
  return corners.length === 0 ? [to] : corners;
}

/** Length of the way along the plan's axes and up or down: no pipe along them is shorter. */
export function apart(one: Point, other: Point): number {
  return Math.abs(one.x - other.x) + Math.abs(one.y - other.y) + Math.abs(one.z - other.z);
}

/**
 * A drawing without what needs no run of its own: stretches that lead nowhere are dropped, and one that only goes on
 * into another becomes one with it. The longer story wins: the stretch behind gives its name where it serves a
 * fixture or a level, and its note where it has one.
 */
export function tidy(from: Point, stretch: Stretch): Stretch[] {
  const end = stretch.corners.at(-1)!;
  const behind = stretch.behind.flatMap((each) => tidy(end, each));
  if (stretch.end !== undefined) return [{ ...stretch, behind }];
  const [only, second] = behind;
  if (only === undefined) return [];
  if (second !== undefined) return [{ ...stretch, behind }];
  const note = only.note ?? stretch.note;
  const fittings = [...(stretch.fittings ?? []), ...(only.fittings ?? [])];
  const merged: Stretch = { ...only, corners: [...stretch.corners, ...only.corners], fittings };
  const length =
    stretch.length === undefined && only.length === undefined
      ? {}
      : { length: developed(from, stretch) + developed(end, only) };
  return [{ ...merged, ...length, ...(note === undefined ? {} : { note }) }];
}

/** Developed length of a stretch from where it begins, in steps. */
export function developed(from: Point, { corners, length }: Pick<Stretch, 'corners' | 'length'>): number {
  if (length !== undefined) return length;
  let total = 0;
  let at = from;
  for (const corner of corners) {
    total += apart(at, corner);
    at = corner;
  }
  return total;
}
