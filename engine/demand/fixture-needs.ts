import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { lookUp } from '../../tables/look-up.ts';
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
