import { route, type Stretch } from './drawing.ts';
import type { Axis, Point } from './grid.ts';
import type { PlacedFixture } from './site.ts';

/**
 * A manifold with a valve at each port, and a line of its own to every inlet. One inlet needs no manifold: its line
 * is the only one.
 *
 * @param toward from the manifold, or where its pipe would have left, to one inlet
 */
export function manifold(
  from: Point,
  at: Point,
  axes: readonly Axis[],
  named: Pick<Stretch, 'name' | 'note'>,
  fixtures: readonly PlacedFixture[],
  toward: (start: Point, placed: PlacedFixture) => Stretch,
): Stretch[] {
  const [only, second] = fixtures;
  if (only === undefined) return [];
  if (second === undefined) return [toward(from, only)];
  const lines = fixtures.map((placed) => toward(at, placed));
  const corners = route(from, at, axes);
  // The size is chosen with the sizes of the runs.
  const end = { device: 'manifold', size: '1', ports: lines.length, valved: true } as const;
  return [{ ...named, corners, end, behind: lines }];
}
