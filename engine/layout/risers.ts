import type { InletSide } from '../job/job.ts';
import type { Cluster } from './clusters.ts';
import { route, type Stretch } from './drawing.ts';
import type { Point } from './grid.ts';
import type { Site, Storey } from './site.ts';
import { spine } from './spine.ts';
import { mainNote, type Part, runName } from './system.ts';

/**
 * A main from the mechanical room to each riser that serves something: up or down to where pipes leave the room, along
 * the plan's first axis and then its second, and through the levels. A cluster belongs to the riser that its members
 * stand nearest to in sum, the first of the list where they are even.
 *
 * @param onLevel what leaves the riser at the pipes of one level, for the clusters there that the riser serves
 */
export function upRisers(
  start: Point,
  part: Part,
  side: InletSide,
  site: Site,
  onLevel: (hub: Point, storey: Storey, clusters: readonly Cluster[]) => Stretch[],
): Stretch[] {
  const named = { name: runName(part, side, 'M'), note: mainNote(part, side) };
  return site.risers.map((riser) => {
    const foot = { ...riser, z: site.travel };
    const mine = part.clusters.filter((cluster) => nearestRiser(site, cluster) === riser);
    const stops = site.storeys.map((storey) => {
      const clusters = mine.filter(({ members }) => members[0]?.storey === storey);
      return { at: storey.pipes, behind: onLevel({ ...foot, z: storey.pipes }, storey, clusters) };
    });
    return { ...named, corners: route(start, foot, ['z', 'x', 'y']), behind: spine(foot, 'z', stops, named) };
  });
}

function nearestRiser({ risers }: Site, { members }: Cluster): Site['risers'][number] {
  const away = ({ x, y }: Site['risers'][number]): number =>
    members.reduce((sum, { plan }) => sum + (plan ? Math.abs(plan.x - x) + Math.abs(plan.y - y) : 0), 0);
  return risers.reduce((best, riser) => (away(riser) < away(best) ? riser : best));
}
