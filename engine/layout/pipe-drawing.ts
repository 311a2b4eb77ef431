import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { FittingCount, Run } from '../job/job.ts';
import { developed, type Stretch } from './drawing.ts';
import type { Axis, Grid, Point } from './grid.ts';

/** A run whose size is still to be found. */
export type UnsizedRun = Omit<Run, 'size'>;

export interface Piping {
  readonly material: MaterialId;
  readonly joint?: JointId;
}

/** The way a pipe goes: an axis, up or down it; undefined before any length of it. */
interface Heading {
  readonly axis: Axis;
  readonly side: number;
}

/**
 * Counts a tidy drawing out into runs, each after the one that feeds it.
 *
 * - Length: what the pipe measures along its corners, the risen part included.
 * - Ells: one at each corner. Bent tube has one, where it leaves the wall at the fixture.
 * - Tees: where several stretches leave one place, all but one leave by the side of a tee of their own, the tees back
 *   to back with no pipe between. What goes straight on, or else the last, goes through; it has an ell if it turns,
 *   and so has a side that comes out along the line.
 * - Valves: as drawn.
 * - No tee at a manifold: each stretch leaves by a port.
 */
export function pipeDrawing(
  drawing: readonly Stretch[],
  from: { readonly run: string; readonly at: Point },
  { grid, piping }: { readonly grid: Grid; readonly piping: Piping },
): UnsizedRun[] {
  const runs: UnsizedRun[] = [];
  const numbers = new Map<string, number>();
  const named = (name: string): string => {
    const number = (numbers.get(name) ?? 0) + 1;
    numbers.set(name, number);
    return `${name}${number}`;
  };

  const add = (stretch: Stretch, above: Above, first: FittingKind[]): void => {
    const { corners, end, note } = stretch;
    const at = corners.at(-1)!;
    const id = named(stretch.name);
    const rise = at.z - above.at.z;
    const { heading, ells } = turns(stretch, above, first);
    runs.push({
      id,
      from: above.run,
      ...piping,
      length: grid.length(developed(above.at, stretch)),
      ...(rise === 0 ? {} : { rise: grid.length(rise) }),
      fittings: counted([
        ...first,
        ...Array.from({ length: ells }, (): FittingKind => 'ell'),
        ...(stretch.fittings ?? []),
      ]),
      ...(end === undefined ? {} : { end }),
      ...(note === undefined ? {} : { note }),
    });
    const ported = end !== undefined && 'device' in end && end.device === 'manifold';
    const next = { run: id, at, heading };
    if (ported) for (const each of stretch.behind) add(each, { ...next, heading: undefined }, []);
    else branch(stretch, stretch.behind, next);
  };

  const branch = (named: Pick<Stretch, 'name'>, leaving: readonly Stretch[], above: Above): void => {
    const through = leaving.findLast((each) => goesOn(above, each)) ?? leaving.at(-1);
    const sides = leaving.filter((each) => each !== through);
    let at = above;
    sides.forEach((side, index) => {
      add(side, at, ['tee-branch']);
      if (index === sides.length - 1) return;
      const nipple: Stretch = { name: named.name, corners: [above.at], behind: [] };
      add(nipple, at, ['tee-run']);
      at = { ...above, run: runs.at(-1)!.id };
    });
    if (through !== undefined) add(through, at, sides.length === 0 ? [] : ['tee-run']);
  };

  branch({ name: drawing[0]?.name ?? '' }, drawing, { ...from, heading: undefined });
  return runs;
}

interface Above {
  readonly run: string;
  readonly at: Point;
  readonly heading: Heading | undefined;
}

/** Ells of a stretch behind its first fitting, and the way it goes at its end. */
function turns(
  stretch: Stretch,
  above: Above,
  first: readonly FittingKind[],
): { heading: Heading | undefined; ells: number } {
  if (stretch.length !== undefined) return { heading: undefined, ells: 2 };
  let { heading } = above;
  let ells = 0;
  let at = above.at;
  let leaving = first.includes('tee-branch');
  for (const corner of stretch.corners) {
    const next = headingOf(at, [corner]);
    at = corner;
    if (next === undefined) continue;
    // The side of a tee turns the pipe by itself, unless it has to go on along the line.
    if (heading !== undefined && (leaving ? next.axis === heading.axis : !isAlong(heading, next))) ells++;
    heading = next;
    leaving = false;
  }
  return { heading, ells: stretch.bent ? 1 : ells };
}

/** Whether a stretch goes on the way that the pipe before it came; unknown where only its length is. */
function goesOn(above: Above, { corners, length }: Stretch): boolean {
  return length === undefined && isAlong(above.heading, headingOf(above.at, corners));
}

function headingOf(from: Point, corners: readonly Point[]): Heading | undefined {
  for (const corner of corners) {
    for (const axis of ['x', 'y', 'z'] as const) {
      if (corner[axis] !== from[axis]) return { axis, side: Math.sign(corner[axis] - from[axis]) };
    }
  }
  return undefined;
}

function isAlong(one: Heading | undefined, other: Heading | undefined): boolean {
  return one !== undefined && one.axis === other?.axis && one.side === other.side;
}

function counted(kinds: readonly FittingKind[]): FittingCount[] {
  const counts = new Map<FittingKind, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => ({ kind, count }));
}
