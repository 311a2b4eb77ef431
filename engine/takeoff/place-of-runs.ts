import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { shutOffs } from '../../tables/pipe/names.ts';
import type { PhaseId, ServiceId } from '../../tables/takeoff/part-kinds.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { Level, Run } from '../job/job.ts';
import type { Network } from '../network/network.ts';

/** A level by its id, or outdoors; `whole` where a job has no levels, and for what belongs to no one place. */
export type Area =
  | { readonly area: 'level'; readonly level: string }
  | { readonly area: 'outdoors' }
  | { readonly area: 'whole' };

/** When, where and for what water the parts of a run are put in. */
export interface RunPlace {
  readonly phase: PhaseId;
  readonly area: Area;
  readonly service: ServiceId;
}

/**
 * The place of every run, by position.
 *
 * - Hot is what comes through a heater; outdoor what feeds hose bibbs and irrigation and nothing else; else cold.
 * - Underground are the named runs; where none are named, the runs from the street up to the first with a shut-off of
 *   the building, as long as they do not branch.
 * - Outdoors is what is underground or of the outdoor service. Else a run belongs to the level of the fixture where it
 *   ends, else to the highest level whose floor is not over its end, else to the lowest.
 */
export function placeOfRuns(
  network: Network,
  followers: readonly (readonly number[])[],
  named: ReadonlySet<string> | undefined,
): readonly RunPlace[] {
  const { runs, hot } = network;
  const outdoor = outdoorRuns(network);
  const rising = [...network.job.levels].sort((one, other) => one.elevation.si - other.elevation.si);
  const levelAt = new Map(network.inlets.map(({ run, fixture }) => [run, fixture.level]));
  const buried = named ?? undergroundRuns(runs, followers);
  return runs.map((run, at): RunPlace => {
    const service = hot[at] === 1 ? 'hot' : outdoor[at] === 1 ? 'outdoor' : 'cold';
    const underground = buried.has(run.id);
    const phase = underground ? 'underground' : 'rough-in';
    const area: Area =
      underground || service === 'outdoor'
        ? { area: 'outdoors' }
        : levelOf(levelAt.get(at), rising, network.elevation[at]!);
    return { phase, area, service };
  });
}

/** 1 where a run feeds hose bibbs or irrigation, and no other fixture. */
function outdoorRuns({ size, parent, inlets }: Network): Uint8Array {
  const outside = new Uint32Array(size);
  const inside = new Uint32Array(size);
  for (const { fixture, run } of inlets) {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    (kind.outdoor ? outside : inside)[run]!++;
  }
  for (let at = size - 1; at > 0; at--) {
    outside[parent[at]!]! += outside[at]!;
    inside[parent[at]!]! += inside[at]!;
  }
  return Uint8Array.from(outside, (count, at) => (count > 0 && inside[at] === 0 ? 1 : 0));
}

function undergroundRuns(runs: readonly Run[], followers: readonly (readonly number[])[]): Set<string> {
  const buried = new Set<string>();
  for (let at = 0; ; ) {
    const run = runs[at]!;
    if (run.end !== undefined && 'fixture' in run.end) break;
    buried.add(run.id);
    const next = followers[at]!;
    if (run.fittings.some(shutsBuilding) || next.length !== 1) break;
    at = next[0]!;
  }
  return buried;
}

/** A stop in the street closes the service, and does not say where the building begins. */
function shutsBuilding({ kind, count }: Run['fittings'][number]): boolean {
  return count > 0 && kind !== 'curb-stop' && shutOffs.has(kind);
}

/** @param rising the levels from the lowest up */
function levelOf(ofFixture: string | undefined, rising: readonly Level[], elevation: number): Area {
  if (ofFixture !== undefined) return { area: 'level', level: ofFixture };
  const [lowest] = rising;
  if (lowest === undefined) return { area: 'whole' };
  const hair = toSI(1e-6, 'ft');
  const { id } = rising.findLast((level) => level.elevation.si <= elevation + hair) ?? lowest;
  return { area: 'level', level: id };
}
