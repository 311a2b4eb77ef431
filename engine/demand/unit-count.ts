import type { UnitsAndCurve } from '../../tables/demand/methods.ts';
import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { hasCell, lookUp } from '../../tables/look-up.ts';
import type { Profile } from '../../tables/profile.ts';
import type { Cited, GridTable } from '../../tables/table.ts';
import type { Fixture, InletSide } from '../job/job.ts';
import { sidesOf } from './fixture-needs.ts';

/** How fixtures are counted in units of a table. */
export interface UnitCount {
  readonly table: GridTable<string, 'cold' | 'hot' | 'total'>;
  /** The row of a fixture, or `null` where the table has none. */
  readonly rowOf: (fixture: Fixture) => string | null;
  /** Where both inlets of a fixture meet, they count one by one, and not as the fixture's total. */
  readonly eachInlet: boolean;
}

/** Fixture units of a code. */
export function codeCount({ fixtureUnits, fixtureRows }: Profile): UnitCount {
  return {
    table: fixtureUnits,
    rowOf: ({ kind, use }) => fixtureRows[kind].units[use],
    eachInlet: false,
  };
}

/** Units of a method that has its own. */
export function countOf({ units, rows, eachInlet }: UnitsAndCurve): UnitCount {
  return { table: units, rowOf: ({ kind, use }) => rows[kind][use], eachInlet: eachInlet === true };
}

/** Whether a fixture runs for long, by its kind or by the job. */
export function runsForLong(fixture: Fixture): boolean {
  const kind: FixtureKind = fixtureKinds[fixture.kind];
  return fixture.continuous ?? kind.continuous ?? false;
}

/**
 * Units of one fixture by side and in total, or undefined where it counts as flow: its kind or the job says that it
 * runs for long, or the table has no row for it.
 *
 * A fixture that is piped on one side only draws all its water there: that side takes the total.
 */
export function unitsOf(
  { table, rowOf }: UnitCount,
  fixture: Fixture,
): { sides: { readonly [side in InletSide]?: Cited }; total: Cited } | undefined {
  if (runsForLong(fixture)) return undefined;
  const row = rowOf(fixture);
  if (row === null) return undefined;
  const total = lookUp(table, row, 'total');
  const [first, second] = sidesOf(fixture);
  if (second === undefined) return { sides: { [first!]: total }, total };
  const part = (side: InletSide): Cited => (hasCell(table, row, side) ? lookUp(table, row, side) : total);
  return { sides: { cold: part('cold'), hot: part('hot') }, total };
}

/** Fixture units of one fixture by its code; see {@link unitsOf}. */
export function fixtureUnits(profile: Profile, fixture: Fixture): ReturnType<typeof unitsOf> {
  return unitsOf(codeCount(profile), fixture);
}
