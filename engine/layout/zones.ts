import { onSide } from './clusters.ts';
import { toFixture } from './fixture-end.ts';
import { manifold } from './manifold.ts';
import { upRisers } from './risers.ts';
import { runName, type System } from './system.ts';

/**
 * Zone manifolds: a main to each riser and through the levels, and at each level a manifold for each side, a foot from
 * the riser, with a line to every inlet that the riser serves there.
 */
export const zones: System = (start, part, side, { site, bent }) =>
  upRisers(start, part, side, site, (hub, storey, clusters) => {
    const { grid } = site;
    const fixtures = onSide(clusters, side).flatMap(({ members }) => members);
    const at = { ...hub, x: hub.x + grid.feet(side === 'cold' ? 1 : -1) };
    const name = runName(part, side, `-${storey.tag}`);
    return manifold(hub, at, ['x'], { name, note: storey.name }, fixtures, (from, placed) =>
      toFixture(from, placed, side, { grid, name, axes: ['x', 'y', 'z'], bent }),
    );
  });
