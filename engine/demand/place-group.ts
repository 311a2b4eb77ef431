import { type FixtureKind, type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { hasCell, lookUp } from '../../tables/look-up.ts';
import type { Profile } from '../../tables/profile.ts';
import type { Cited } from '../../tables/table.ts';
import type { Fixture, FixtureGroup, GroupKind, InletSide } from '../job/job.ts';
import type { Inlet, UnitSource } from '../network/network.ts';
import { fixtureUnits } from './unit-count.ts';

/** What a group changes at one run. */
export interface Placed {
  readonly run: number;
  readonly amount: number;
  readonly source: UnitSource;
}

const closets: readonly FixtureKindId[] = [
  'water-closet-tank',
  'water-closet-one-piece',
  'water-closet-flushometer',
  'water-closet-flushometer-tank',
];
const baths: readonly FixtureKindId[] = ['bathtub-shower', 'bathtub', 'shower'];

/** One fixture of each list makes the group that the codes mean; what is over counts on its own. */
const makeUp: { readonly [kind in GroupKind]: readonly (readonly FixtureKindId[])[] } = {
  'full-bath': [closets, ['lavatory'], baths],
  'half-bath': [closets, ['lavatory']],
  kitchen: [['kitchen-sink'], ['dishwasher']],
  laundry: [['clothes-washer'], ['laundry-tray']],
};

/**
 * Whether a code's value for groups speaks of this fixture: one, in private use, and piped as its kind usually is. A
 * bath on cold water alone draws more there than the group's cold value allows, and nothing of its hot value.
 */
function isUsual({ count, use, inlets, kind }: Fixture): boolean {
  return (
    count === 1 && use === 'private' && (inlets ?? fixtureKinds[kind].inlets) === fixtureKinds[kind].inlets
  );
}

/** The fixtures that make up the group, or undefined where one is missing. */
function groupFixtures(kind: GroupKind, fixtures: readonly Fixture[]): Fixture[] | undefined {
  const chosen: Fixture[] = [];
  for (const kinds of makeUp[kind]) {
    const found = fixtures.find((fixture) => kinds.includes(fixture.kind) && isUsual(fixture));
    if (found === undefined) return undefined;
    chosen.push(found);
  }
  return chosen;
}

/**
 * Where a group's value replaces its fixtures' own: at the run that serves all of it, and on the way there at runs
 * that serve all of its cold (or hot) and nothing of the other side. A run that serves part of it keeps the
 * fixtures' own values.
 */
export function placeGroup(
  profile: Profile,
  group: FixtureGroup,
  members: ReadonlyMap<Fixture, readonly Inlet[]>,
  meet: (one: number, other: number) => number,
): Placed[] {
  const fixtures = groupFixtures(group.kind, [...members.keys()]);
  if (fixtures === undefined) return [];
  const traits = fixtures.map((fixture): FixtureKind => fixtureKinds[fixture.kind]);
  const rows = profile.groupRows[group.kind];
  const row = traits.some((kind) => kind.flushometer) ? rows.valve : rows.tank;
  if (row === null) return [];

  const runs: { cold: number[]; hot: number[] } = { cold: [], hot: [] };
  const own: { cold: Cited[]; hot: Cited[]; total: Cited[] } = { cold: [], hot: [], total: [] };
  for (const fixture of fixtures) {
    const units = fixtureUnits(profile, fixture);
    if (units === undefined) return [];
    own.total.push(units.total);
    for (const { side, run } of members.get(fixture)!) {
      runs[side].push(run);
      own[side].push(units.sides[side]!);
    }
  }

  const placed: Placed[] = [];
  const replace = (run: number, column: 'cold' | 'hot' | 'total', what: 'group' | 'group ends'): void => {
    const value = lookUp(profile.fixtureUnits, row, column);
    const members = own[column];
    const gain = value.value - members.reduce((sum, member) => sum + member.value, 0);
    const source = { what, group: group.id, column, value, members };
    placed.push({ run, amount: what === 'group' ? gain : -gain, source });
  };
  const meetAll = (list: readonly number[]): number => list.reduce((one, other) => meet(one, other));
  const side = (column: InletSide, other: InletSide): void => {
    if (runs[column].length === 0 || runs[other].length === 0) return;
    if (!hasCell(profile.fixtureUnits, row, column)) return;
    const from = meetAll(runs[column]);
    // The first run on the way to the street that serves something of the other side as well.
    const until = Math.max(...runs[other].map((run) => meet(from, run)));
    if (until === from) return;
    replace(from, column, 'group');
    replace(until, column, 'group ends');
  };
  side('cold', 'hot');
  side('hot', 'cold');
  replace(meetAll([...runs.cold, ...runs.hot]), 'total', 'group');
  return placed;
}
