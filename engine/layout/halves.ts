import type { Profile } from '../../tables/profile.ts';
import { fixtureUnits } from '../demand/unit-count.ts';
import type { Cluster } from './clusters.ts';
import type { Part } from './system.ts';

interface Cut {
  readonly first: readonly Cluster[];
  readonly second: readonly Cluster[];
  readonly names: readonly [Pick<Part, 'tag' | 'name'>, Pick<Part, 'tag' | 'name'>];
}

const byPlan: Cut['names'] = [
  { tag: 'W', name: 'West half' },
  { tag: 'E', name: 'East half' },
];
const byLevel: Cut['names'] = [
  { tag: 'B', name: 'Lower half' },
  { tag: 'T', name: 'Upper half' },
];

/**
 * Splits a house into two parts, by a line across the plan's first axis or between two levels, whichever leaves the
 * fixture units of the two closest to each other; the plan where both leave the same. A cluster stays whole. The
 * plan's first axis is taken to point east.
 *
 * @returns the western or lower part first; undefined where there is no line to cut along
 */
export function halvesOf(clusters: readonly Cluster[], profile: Profile): [Part, Part] | undefined {
  const cuts = [...cutsBy(clusters, middle, byPlan), ...cutsBy(clusters, floorOf, byLevel)];
  const [first, ...others] = cuts;
  if (first === undefined) return undefined;
  const apart = ({ first: one, second: other }: Cut): number =>
    Math.abs(unitsOf(one, profile) - unitsOf(other, profile));
  const best = others.reduce((kept, cut) => (apart(cut) < apart(kept) - 1e-9 ? cut : kept), first);
  const [one, other] = best.names;
  return [
    { ...one, clusters: best.first },
    { ...other, clusters: best.second },
  ];
}

/** Sum of fixture units, cold and hot together; what runs for long has none and does not count. */
export function unitsOf(clusters: readonly Cluster[], profile: Profile): number {
  return clusters
    .flatMap(({ members }) => members)
    .reduce(
      (sum, { fixture }) => sum + fixture.count * (fixtureUnits(profile, fixture)?.total.value ?? 0),
      0,
    );
}

/** Every way to part the clusters between two different places; those without a place make none. */
function cutsBy(
  clusters: readonly Cluster[],
  place: (cluster: Cluster) => number | undefined,
  names: Cut['names'],
): Cut[] {
  const places = clusters.map((cluster) => place(cluster));
  if (places.includes(undefined)) return [];
  const rising = [...new Set(places as number[])].sort((one, other) => one - other);
  return rising.slice(1).map((limit) => ({
    first: clusters.filter((_, index) => places[index]! < limit),
    second: clusters.filter((_, index) => places[index]! >= limit),
    names,
  }));
}

function middle({ members }: Cluster): number | undefined {
  const places = members.map(({ plan }) => plan?.x);
  return places.includes(undefined)
    ? undefined
    : (places as number[]).reduce((sum, x) => sum + x, 0) / places.length;
}

function floorOf({ members }: Cluster): number | undefined {
  return members[0]?.storey.floor;
}
