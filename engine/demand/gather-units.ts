import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { Profile } from '../../tables/profile.ts';
import type { Fixture, FixtureGroup, Job } from '../job/job.ts';
import type { Inlet, UnitSource } from '../network/network.ts';
import { fixtureUnits } from './fixture-needs.ts';
import { placeGroup } from './place-group.ts';

/** What each run adds to the sums that are gathered against the flow of water; see Network. */
export interface Gathered {
  readonly unitsAdded: Float64Array;
  readonly continuousAdded: Float64Array;
  readonly ownFlow: Float64Array;
  readonly ownFlowAdded: Float64Array;
  readonly flushometer: Uint8Array;
  readonly sources: readonly (readonly UnitSource[])[];
}

const none: readonly UnitSource[] = [];

/**
 * Places fixture units so that a plain sum over the runs that a run feeds gives its units: each inlet's own value
 * where it ends, and where both inlets of a fixture meet, the step from cold plus hot to the total, so that no
 * fixture counts twice; likewise where all of a group meets. Policy: design, section 4; the traps are those of the
 * printed tables, where hot plus cold is more than the total and a group is less than its fixtures.
 */
export function gatherUnits(
  job: Job,
  profile: Profile,
  size: number,
  inlets: readonly Inlet[],
  meet: (one: number, other: number) => number,
): Gathered {
  const unitsAdded = new Float64Array(size);
  const continuousAdded = new Float64Array(size);
  const ownFlow = new Float64Array(size);
  const ownFlowAdded = new Float64Array(size);
  const flushometer = new Uint8Array(size);
  const sources: UnitSource[][] = [];
  const add = (run: number, amount: number, source: UnitSource): void => {
    unitsAdded[run]! += amount;
    const list = sources[run];
    if (list === undefined) sources[run] = [source];
    else list.push(source);
  };

  const inletsOf = new Map<Fixture, Inlet[]>();
  for (const inlet of inlets) {
    const list = inletsOf.get(inlet.fixture);
    if (list === undefined) inletsOf.set(inlet.fixture, [inlet]);
    else list.push(inlet);
  }
  for (const [fixture, ends] of inletsOf) {
    const { count } = fixture;
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    const units = fixtureUnits(profile, fixture);
    const flow = ends[0]!.requiredFlow;
    const flowAdded = units === undefined ? continuousAdded : ownFlowAdded;
    for (const { run, side } of ends) {
      flowAdded[run]! += count * flow;
      if (units === undefined) continue;
      if (kind.flushometer) flushometer[run] = 1;
      ownFlow[run] = flow;
      const each = units.sides[side]!;
      add(run, count * each.value, { what: 'inlet', fixture, side, each });
    }
    if (ends.length === 2) {
      const meeting = meet(ends[0]!.run, ends[1]!.run);
      flowAdded[meeting]! -= count * flow;
      if (units !== undefined) {
        const { total } = units;
        const { cold, hot } = units.sides;
        const amount = count * (total.value - cold!.value - hot!.value);
        add(meeting, amount, { what: 'both sides', fixture, total, cold: cold!, hot: hot! });
      }
    }
  }
  for (const [group, members] of membersOf(job, inletsOf)) {
    for (const { run, amount, source } of placeGroup(profile, group, members, meet)) add(run, amount, source);
  }
  return {
    unitsAdded,
    continuousAdded,
    ownFlow,
    ownFlowAdded,
    flushometer,
    sources: Array.from({ length: size }, (_, run) => sources[run] ?? none),
  };
}

function membersOf(
  job: Job,
  inletsOf: ReadonlyMap<Fixture, readonly Inlet[]>,
): Map<FixtureGroup, Map<Fixture, readonly Inlet[]>> {
  const byId = new Map(job.groups.map((group) => [group.id, group]));
  const members = new Map<FixtureGroup, Map<Fixture, readonly Inlet[]>>();
  // In the order of the schedule: which of two showers makes up the group must not hang on the order of the runs.
  for (const fixture of job.fixtures) {
    const group = fixture.group === undefined ? undefined : byId.get(fixture.group);
    const ends = inletsOf.get(fixture);
    if (group === undefined || ends === undefined) continue;
    const list = members.get(group);
    if (list === undefined) members.set(group, new Map([[fixture, ends]]));
    else list.set(fixture, ends);
  }
  return members;
}
