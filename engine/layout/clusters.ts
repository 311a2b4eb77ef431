import { sidesOf } from '../demand/fixture-needs.ts';
import type { InletSide } from '../job/job.ts';
import type { PlacedFixture } from './site.ts';

/** Fixtures that share a branch: those of one group on one level, or a fixture by itself. */
export interface Cluster {
  readonly name: string;
  readonly members: readonly PlacedFixture[];
}

/** Clusters in the order of the schedule. A member without a position stands by itself: nobody knows beside what. */
export function clustersOf(
  fixtures: readonly PlacedFixture[],
  groups: readonly { readonly id: string; readonly name: string }[],
): Cluster[] {
  const names = new Map(groups.map(({ id, name }) => [id, name]));
  const clusters = new Map<string, { name: string; members: PlacedFixture[] }>();
  for (const placed of fixtures) {
    const { fixture, storey, plan } = placed;
    const shared = fixture.group !== undefined && names.has(fixture.group) && plan !== undefined;
    const key = shared ? `group ${fixture.group} ${storey.id}` : `fixture ${fixture.id}`;
    const cluster = clusters.get(key);
    if (cluster !== undefined) cluster.members.push(placed);
    else
      clusters.set(key, {
        name: (shared ? names.get(fixture.group!) : undefined) ?? fixture.name,
        members: [placed],
      });
  }
  return [...clusters.values()];
}

/** The clusters with the members that have an inlet on one side. */
export function onSide(clusters: readonly Cluster[], side: InletSide): Cluster[] {
  return clusters
    .map(({ name, members }) => ({
      name,
      members: members.filter(({ fixture }) => sidesOf(fixture).includes(side)),
    }))
    .filter(({ members }) => members.length > 0);
}
