import type { InletSide } from '../job/job.ts';
import type { Cluster } from './clusters.ts';
import type { Stretch } from './drawing.ts';
import { toFixture } from './fixture-end.ts';
import type { Grid, Point } from './grid.ts';
import type { PlacedFixture } from './site.ts';
import { spine } from './spine.ts';

type PlanAxis = 'x' | 'y';

/**
 * The axis of the plan along which a branch main passes closest to most fixtures: the one across which they stand
 * less far away in sum; `x` where they are even.
 */
export function mainAxis(hub: Point, fixtures: readonly PlacedFixture[]): PlanAxis {
  let alongX = 0;
  let alongY = 0;
  for (const { plan } of fixtures) {
    if (plan === undefined) continue;
    alongX += Math.abs(plan.x - hub.x);
    alongY += Math.abs(plan.y - hub.y);
  }
  return alongX >= alongY ? 'x' : 'y';
}

/**
 * The pipes of one level from its hub: a branch main along one axis; where the nearest member of a cluster stands, a
 * branch of the cluster across it; where each member stands, its own pipe along the main's axis and up or down to the
 * inlet. A cluster on both sides of the hub leaves at the hub. So every pipe goes away from the hub at each step, and
 * no fixture is reached by a way longer than along the plan's axes. Fixtures without a position leave at the hub.
 *
 * @returns what leaves the hub
 */
export function comb(
  hub: Point,
  clusters: readonly Cluster[],
  side: InletSide,
  drawn: { readonly grid: Grid; readonly name: string; readonly axis: PlanAxis; readonly note?: string },
): Stretch[] {
  const { grid, name, axis, note } = drawn;
  const across: PlanAxis = axis === 'x' ? 'y' : 'x';
  const stops = clusters.map(({ name: cluster, members }) => {
    const placed = members.flatMap((member) =>
      member.plan === undefined ? [] : [{ member, plan: member.plan }],
    );
    const tap = {
      ...hub,
      [axis]: nearest(
        hub[axis],
        placed.map(({ plan }) => plan[axis]),
      ),
    };
    const branch = placed.map(({ member, plan }) => {
      const leaves = { ...tap, [across]: plan[across] };
      return {
        at: plan[across],
        behind: [toFixture(leaves, member, side, { grid, name, axes: [axis, 'z'] })],
      };
    });
    return { at: tap[axis], behind: spine(tap, across, branch, { name, note: cluster }) };
  });
  const unplaced = clusters.flatMap(({ members }) =>
    members
      .filter(({ plan }) => plan === undefined)
      .map((member) => toFixture(hub, member, side, { grid, name, axes: ['z'] })),
  );
  return [...unplaced, ...spine(hub, axis, stops, { name, ...(note === undefined ? {} : { note }) })];
}

/** The place nearest to a hub among places on one side of it; the hub itself where they stand on both, or none does. */
function nearest(hub: number, places: readonly number[]): number {
  if (places.length === 0) return hub;
  const least = Math.min(...places);
  const most = Math.max(...places);
  if (least > hub) return least;
  return Math.min(most, hub);
}
