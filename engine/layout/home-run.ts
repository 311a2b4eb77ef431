import { onSide } from './clusters.ts';
import { apart, route, type Stretch } from './drawing.ts';
import { toFixture } from './fixture-end.ts';
import type { Point } from './grid.ts';
import { manifold } from './manifold.ts';
import type { PlacedFixture, Site } from './site.ts';
import { mainNote, runName, type System } from './system.ts';

/**
 * Home runs: one manifold for each side, beside the mains in the mechanical room, and a line from it to every inlet.
 * The storeys under and over the ceiling of the room are reached straight, the others by the riser that makes the
 * line shortest.
 */
export const homeRun: System = (start, part, side, { site, bent }) => {
  const fixtures = onSide(part.clusters, side).flatMap(({ members }) => members);
  const { grid } = site;
  const away = grid.feet(side === 'cold' ? -2 : 2);
  const at = { x: start.x + away, y: start.y, z: start.z + grid.feet(1) };
  const main = { name: runName(part, side, 'M'), note: mainNote(part, side) };
  return manifold(start, at, ['z', 'x'], main, fixtures, (port, placed) => {
    const name = runName(part, side, `-${placed.storey.tag}`);
    const line = (from: Point): Stretch =>
      toFixture(from, placed, side, { grid, name, axes: ['x', 'y', 'z'], bent });
    if (isBeside(site, placed) && placed.plan === undefined) return line(port);
    const via = wayTo(site, port, placed);
    return { name, bent, corners: via, behind: [line(via.at(-1)!)] };
  });
};

/** Whether a fixture's pipes lie where the mechanical room reaches them with no riser. */
function isBeside({ storeys, room }: Site, { storey }: PlacedFixture): boolean {
  const above = storeys.filter(({ floor }) => floor > room.z).map(({ floor }) => floor);
  return storey.floor === room.z || storey.floor === Math.min(...above);
}

/** From the manifold to the height of the fixture's pipes, in the room or through the best riser. */
function wayTo(site: Site, at: Point, placed: PlacedFixture): Point[] {
  const { pipes } = placed.storey;
  if (isBeside(site, placed)) return route(at, { ...at, z: pipes }, ['z']);
  const ends = site.risers.map((riser) => ({ ...riser, z: pipes }));
  const length = (end: Point): number => {
    const beyond = placed.plan === undefined ? 0 : apart(end, { ...placed.plan, z: pipes });
    return Math.abs(at.x - end.x) + Math.abs(at.y - end.y) + beyond;
  };
  const best = ends.reduce((one, other) => (length(other) < length(one) ? other : one));
  const foot = { ...best, z: site.travel };
  return [...route(at, foot, ['z', 'x', 'y']), ...route(foot, best, ['z'])];
}
