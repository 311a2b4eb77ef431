import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { InletSide } from '../job/job.ts';
import { apart, developed, route, type Stretch } from './drawing.ts';
import type { Axis, Grid, Point } from './grid.ts';
import { inletPractice } from './inlet-practice.ts';
import type { PlacedFixture } from './site.ts';

/**
 * The pipe from a place to a fixture's inlet: along the axes in their order where the plan says where it stands, else
 * of the length that the schedule gives, which is never less than the height between. It ends with the stop of its
 * kind. Ahead of a quick-closing valve, a tee a foot back along the pipe carries an arrester a foot up.
 */
export function toFixture(
  from: Point,
  placed: PlacedFixture,
  side: InletSide,
  way: {
    readonly grid: Grid;
    readonly name: string;
    readonly axes: readonly Axis[];
    readonly bent?: boolean;
  },
): Stretch {
  const { fixture, height, plan, distance } = placed;
  const { stop } = inletPractice[fixture.kind];
  const inlet = plan === undefined ? { ...from, z: height } : { ...plan, z: height };
  const traits: FixtureKind = fixtureKinds[fixture.kind];
  const named = { name: way.name, ...(way.bent ? { bent: true } : {}) };
  const end = { fixture: fixture.id, inlet: side };
  const fittings = stop === undefined ? [] : [stop];
  const given = distance === undefined ? {} : { length: Math.max(distance, Math.abs(height - from.z)) };
  const whole = { ...named, ...given, corners: route(from, inlet, way.axes), behind: [] };
  if (!traits.quickClosing) return { ...whole, end, fittings, note: fixture.name };

  const foot = way.grid.feet(1);
  const { corners, cut, short } = cutBack(from, whole, foot);
  const up = { ...cut, z: cut.z + foot };
  return {
    ...whole,
    ...short,
    corners,
    note: fixture.name,
    behind: [
      {
        name: way.name,
        corners: [inlet],
        ...(distance === undefined ? {} : { length: foot }),
        end,
        fittings,
        behind: [],
      },
      { name: way.name, corners: [up], end: { device: 'arrester', size: 'A' }, behind: [] },
    ],
  };
}

/** A way cut short by so many steps of its last leg, or by all of that leg where it is shorter. */
function cutBack(
  from: Point,
  { corners, length }: Pick<Stretch, 'corners' | 'length'>,
  steps: number,
): { corners: readonly Point[]; cut: Point; short: { length?: number } } {
  const last = corners.at(-1)!;
  if (length !== undefined) {
    const least = developed(from, { corners });
    return { corners, cut: last, short: { length: Math.max(length - steps, least) } };
  }
  const before = corners.at(-2) ?? from;
  const back = Math.min(steps, apart(before, last));
  const toward = (axis: Axis): number => last[axis] - Math.sign(last[axis] - before[axis]) * back;
  const cut = { x: toward('x'), y: toward('y'), z: toward('z') };
  return { corners: [...corners.slice(0, -1), cut], cut, short: {} };
}
