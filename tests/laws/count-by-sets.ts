import type { Fixture, FixtureGroup, GroupKind, Job, Run } from '../../engine/job/job.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { demandTank, demandValve } from '../../tables/ipc-2018/demand.ts';
import { demandTank as ircTank, demandValve as ircValve } from '../../tables/irc-2021/demand.ts';
import { profiles } from '../../tables/profiles.ts';
import type { CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';

/**
 * A second count of demand, from the words of the policy and by sets: for each run the inlets that stand behind it, and
 * nothing of the engine but the types. Slow, and short enough to read.
 */
export interface Counted {
  readonly units: number;
  /** m3/s */
  readonly flow: number;
}

type Printed = { readonly cold?: number; readonly hot?: number; readonly total?: number };

const closets = [
  'water-closet-tank',
  'water-closet-one-piece',
  'water-closet-flushometer',
  'water-closet-flushometer-tank',
];
const lists: { readonly [kind in GroupKind]: readonly (readonly string[])[] } = {
  'full-bath': [closets, ['lavatory'], ['bathtub-shower', 'bathtub', 'shower']],
  'half-bath': [closets, ['lavatory']],
  kitchen: [['kitchen-sink'], ['dishwasher']],
  laundry: [['clothes-washer'], ['laundry-tray']],
};

export function countBySets(job: Job): Map<string, Counted> {
  const { runs } = job.schemes[0]!;
  const inletsBehind = (run: Run): Set<string> => {
    const found = new Set<string>();
    const pending = [run];
    for (let next = pending.pop(); next !== undefined; next = pending.pop()) {
      if (next.end !== undefined && 'fixture' in next.end) found.add(`${next.end.fixture} ${next.end.inlet}`);
      const { id } = next;
      pending.push(...runs.filter(({ from }) => from === id));
    }
    return found;
  };
  const counted = new Map<string, Counted>();
  const flowOf = (run: Run): number => {
    const behind = inletsBehind(run);
    const here = demandOf(job, behind);
    // No run carries less than any that it feeds.
    return Math.max(here.flow, ...runs.filter(({ from }) => from === run.id).map(flowOf));
  };
  for (const run of runs) {
    counted.set(run.id, { units: demandOf(job, inletsBehind(run)).units, flow: flowOf(run) });
  }
  return counted;
}

function sidesOf(fixture: Fixture): ('cold' | 'hot')[] {
  const inlets = fixture.inlets ?? fixtureKinds[fixture.kind].inlets;
  return inlets === 'both' ? ['cold', 'hot'] : [inlets];
}

/** The printed row of a fixture, or undefined where it counts as flow. */
function rowOf(job: Job, fixture: Fixture): Printed | undefined {
  const profile = profiles[job.basis.profile];
  const kind: FixtureKind = fixtureKinds[fixture.kind];
  if (fixture.continuous ?? kind.continuous) return undefined;
  const row = profile.fixtureRows[fixture.kind].units[fixture.use];
  return row === null ? undefined : profile.fixtureUnits.rows[row]!.values;
}

function demandOf(job: Job, behind: ReadonlySet<string>): Counted {
  const profile = profiles[job.basis.profile];
  const here = job.fixtures.filter((fixture) =>
    sidesOf(fixture).some((side) => behind.has(`${fixture.id} ${side}`)),
  );
  const served = (fixture: Fixture): ('cold' | 'hot')[] =>
    sidesOf(fixture).filter((side) => behind.has(`${fixture.id} ${side}`));
  const own = (fixture: Fixture): number => {
    const row = rowOf(job, fixture);
    if (row === undefined) return 0;
    const sides = served(fixture);
    const whole = sides.length === sidesOf(fixture).length;
    return whole ? row.total! : (row[sides[0]!] ?? row.total!);
  };

  let units = here.reduce((sum, fixture) => sum + fixture.count * own(fixture), 0);
  for (const group of job.groups) {
    const members = membersOf(job, group);
    if (members === undefined) continue;
    const rows = profile.groupRows[group.kind];
    const flushes = members.some(({ kind }) => (fixtureKinds[kind] as FixtureKind).flushometer);
    const row = flushes ? rows.valve : rows.tank;
    if (row === null) continue;
    const printed: Printed = profile.fixtureUnits.rows[row]!.values;
    const inlets = members.flatMap((fixture) => sidesOf(fixture).map((side) => ({ fixture, side })));
    const has = (side: 'cold' | 'hot'): { all: boolean; none: boolean; exists: boolean } => {
      const list = inlets.filter((inlet) => inlet.side === side);
      const held = list.filter(({ fixture }) => behind.has(`${fixture.id} ${side}`));
      return { all: held.length === list.length, none: held.length === 0, exists: list.length > 0 };
    };
    const cold = has('cold');
    const hot = has('hot');
    let value: number | undefined;
    if (cold.all && hot.all) value = printed.total;
    else if (cold.exists && cold.all && hot.none) value = printed.cold;
    else if (hot.exists && hot.all && cold.none) value = printed.hot;
    if (value === undefined) continue;
    units +=
      value - members.reduce((sum, fixture) => sum + (served(fixture).length === 0 ? 0 : own(fixture)), 0);
  }

  const flowOf = (fixture: Fixture): number =>
    fixture.flow?.si ??
    toSI(
      profile.outlets.rows[profile.fixtureRows[fixture.kind].outlet]!.values.flow!,
      profile.outlets.columns.flow,
    );
  const inUnits = here.filter((fixture) => rowOf(job, fixture) !== undefined);
  const forLong = here.filter((fixture) => rowOf(job, fixture) === undefined);
  const largest = Math.max(0, ...inUnits.map(flowOf));
  const sum = inUnits.reduce((total, fixture) => total + fixture.count * flowOf(fixture), 0);
  const several = inUnits.reduce((count, fixture) => count + fixture.count, 0) > 1;
  const valve = inUnits.some(({ kind }) => (fixtureKinds[kind] as FixtureKind).flushometer);
  let flow = largest;
  if (several) {
    const table = read(columnOf(job, valve), Math.round(units * 1e6) / 1e6, job.basis.between === 'round-up');
    flow = Math.max(flow, typeof table === 'number' ? table : Math.min(sum, table.first));
  }
  return {
    units,
    flow: flow + forLong.reduce((total, fixture) => total + fixture.count * flowOf(fixture), 0),
  };
}

/**
 * The fixtures that make up a group, in the order of the schedule: single ones, private, piped as usual; undefined where
 * one is missing or has no units.
 */
function membersOf(job: Job, group: FixtureGroup): Fixture[] | undefined {
  const candidates = job.fixtures.filter(
    ({ group: of, count, use, kind, inlets }) =>
      of === group.id &&
      count === 1 &&
      use === 'private' &&
      (inlets === undefined || inlets === fixtureKinds[kind].inlets),
  );
  const members = lists[group.kind].map((kinds) => candidates.find(({ kind }) => kinds.includes(kind)));
  if (members.some((member) => member === undefined || rowOf(job, member) === undefined)) return undefined;
  return members as Fixture[];
}

function columnOf(job: Job, valve: boolean): CurveTable {
  if (job.basis.profile === 'ipc-2018') return valve ? demandValve : demandTank;
  return valve ? ircValve : ircTank;
}

/** A printed column read at so many units, m3/s; below the first row, that row's flow. */
function read({ points, y }: CurveTable, units: number, roundUp: boolean): number | { first: number } {
  const gpm = (value: number): number => toSI(value, y);
  if (units < points[0]![0]) return { first: gpm(points[0]![1]) };
  let row = points.findIndex(([x]) => x >= units);
  if (row >= 0 && (roundUp || points[row]![0] === units)) return gpm(points[row]![1]);
  if (row < 0) row = points.length - 1;
  const [x1, y1] = points[row - 1]!;
  const [x2, y2] = points[row]!;
  return gpm(y1 + ((y2 - y1) * (units - x1)) / (x2 - x1));
}
