import { onSide } from './clusters.ts';
import { comb, mainAxis } from './comb.ts';
import { upRisers } from './risers.ts';
import { runName, type System } from './system.ts';

/**
 * Trunk and branch: a main to each riser and through the levels, and on each level a branch main with a branch for
 * each cluster. Cold and hot of a level lie along the same axis, that of all its fixtures.
 */
export const trunk: System = (start, part, side, { site }) =>
  upRisers(start, part, side, site, (hub, storey, clusters) =>
    comb(hub, onSide(clusters, side), side, {
      grid: site.grid,
      name: runName(part, side, `-${storey.tag}`),
      axis: mainAxis(
        hub,
        clusters.flatMap(({ members }) => members),
      ),
      note: storey.name,
    }),
  );
