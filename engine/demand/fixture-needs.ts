import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { hasCell, lookUp } from '../../tables/look-up.ts';
import type { Profile } from '../../tables/profile.ts';
import type { Cited } from '../../tables/table.ts';
import type { Fixture, InletSide } from '../job/job.ts';

/** The sides that are piped to a fixture. */
export function sidesOf(fixture: Fixture): readonly InletSide[] {
  const inlets = fixture.inlets ?? fixtureKinds[fixture.kind].inlets;
  return inlets === 'both' ? ['cold', 'hot'] : [inlets];
}

/** Flow that a fixture needs, m3/s, and where that is said: the maker before the code. */
export function requiredFlow(profile: Profile, fixture: Fixture): { value: number; from: Cited | 'maker' } {
  if (fixture.flow !== undefined) return { value: fixture.flow.si, from: 'maker' };
  const cited = lookUp(profile.outlets, profile.fixtureRows[fixture.kind].outlet, 'flow');
  return { value: cited.value, from: cited };
}

/** Flowing pressure that a fixture needs, Pa, and where that is said: the maker before the code. */
export function requiredPressure(
  profile: Profile,
  fixture: Fixture,
): { value: number; from: Cited | 'maker' } {
  if (fixture.pressure !== undefined) return { value: fixture.pressure.si, from: 'maker' };
  const cited = lookUp(profile.outlets, profile.fixtureRows[fixture.kind].outlet, 'pressure');
  return { value: cited.value, from: cited };
}

/**
 * Fixture units of one fixture by side and in total, or undefined where it counts as flow: its kind or the job says
 * that it runs for long, or the code prints no row for it.
 *
 * A fixture that is piped on one side only draws all its water there: that side takes the total.
 */
export function fixtureUnits(
  profile: Profile,
  fixture: Fixture,
): { sides: { readonly [side in InletSide]?: Cited }; total: Cited } | undefined {
  const kind: FixtureKind = fixtureKinds[fixture.kind];
  if (fixture.continuous ?? kind.continuous ?? false) return undefined;
  const row = profile.fixtureRows[fixture.kind].units[fixture.use];
  if (row === null) return undefined;
  const total = lookUp(profile.fixtureUnits, row, 'total');
  const [first, second] = sidesOf(fixture);
  if (second === undefined) return { sides: { [first!]: total }, total };
  const part = (side: InletSide): Cited =>
    hasCell(profile.fixtureUnits, row, side) ? lookUp(profile.fixtureUnits, row, side) : total;
  return { sides: { cold: part('cold'), hot: part('hot') }, total };
}
