import type { Profile } from '../../tables/profile.ts';
import type { Fixture, FixtureGroup, Job } from '../job/job.ts';
import type { Inlet, UnitSource } from '../network/network.ts';
import type { FixtureEnds, Meet } from './fixture-ends.ts';
import { type Placed, placeGroup } from './place-group.ts';
import { sumPrinted } from './sum-along.ts';
import { codeCount, type UnitCount, unitsOf } from './unit-count.ts';

/** Units by position: what each run adds and why, and the sums over all that it feeds. */
export interface GatheredUnits {
  readonly added: Float64Array;
  readonly sources: readonly (readonly UnitSource[])[];
  readonly units: Float64Array;
}

const none: readonly UnitSource[] = [];

/**
 * Places units so that a plain sum over the runs that a run feeds gives its units: each inlet's own value where it
 * ends, and where both inlets of a fixture meet, the step from cold plus hot to the total, so that no fixture counts
 * twice; likewise where all of a group meets. Policy: design, section 4; the traps are those of the printed tables,
 * where hot plus cold is more than the total and a group is less than its fixtures.
 *
 * @param groups what groups change, for tables that print some
 */
export function gatherUnits(
  count: UnitCount,
  parent: Int32Array,
  ends: FixtureEnds,
  meet: Meet,
  groups: readonly Placed[] = [],
): GatheredUnits {
  const size = parent.length;
  const added = new Float64Array(size);
  const sources: UnitSource[][] = [];
  const add = (run: number, amount: number, source: UnitSource): void => {
    added[run]! += amount;
    const list = sources[run];
    if (list === undefined) sources[run] = [source];
    else list.push(source);
  };
  for (const [fixture, inlets] of ends) {
    const units = unitsOf(count, fixture);
    if (units === undefined) continue;
    for (const { run, side } of inlets) {
      const each = units.sides[side]!;
      add(run, fixture.count * each.value, { what: 'inlet', fixture, side, each });
    }
    if (inlets.length < 2 || count.eachInlet) continue;
    const { total } = units;
    const { cold, hot } = units.sides;
    const amount = fixture.count * (total.value - cold!.value - hot!.value);
    add(meet(inlets[0]!.run, inlets[1]!.run), amount, {
      what: 'both sides',
      fixture,
      total,
      cold: cold!,
      hot: hot!,
    });
  }
  for (const { run, amount, source } of groups) add(run, amount, source);
  return {
    added,
    sources: Array.from({ length: size }, (_, run) => sources[run] ?? none),
    units: sumPrinted(parent, added),
  };
}

/** Fixture units of the profile, with the values that it prints for groups. */
export function gatherCodeUnits(
  job: Job,
  profile: Profile,
  parent: Int32Array,
  ends: FixtureEnds,
  meet: Meet,
): GatheredUnits {
  const groups = [...membersOf(job, ends)].flatMap(([group, members]) =>
    placeGroup(profile, group, members, meet),
  );
  return gatherUnits(codeCount(profile), parent, ends, meet, groups);
}

function membersOf(job: Job, ends: FixtureEnds): Map<FixtureGroup, Map<Fixture, readonly Inlet[]>> {
  const byId = new Map(job.groups.map((group) => [group.id, group]));
  const members = new Map<FixtureGroup, Map<Fixture, readonly Inlet[]>>();
  // In the order of the schedule: which of two showers makes up the group must not hang on the order of the runs.
  for (const fixture of job.fixtures) {
    const group = fixture.group === undefined ? undefined : byId.get(fixture.group);
    const inlets = ends.get(fixture);
    if (group === undefined || inlets === undefined) continue;
    const list = members.get(group);
    if (list === undefined) members.set(group, new Map([[fixture, inlets]]));
    else list.set(fixture, inlets);
  }
  return members;
}
