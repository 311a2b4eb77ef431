import { citeValue, lookUp } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import type { Fixture } from '../job/job.ts';
import { deviceOf } from '../network/device-of.ts';
import type { Inlet, Network } from '../network/network.ts';
import { isOver } from './over.ts';

/**
 * Least nominal size, in inches, of the run that ends at an inlet: the code's supply size, or that of a home run where
 * the run comes from a manifold, is short enough and the street gives enough (Pa, under flow); 0 where the code prints
 * no size.
 */
export function leastSupply(network: Network, { fixture, run: at }: Inlet, streetPressure: number): number {
  const profile = profiles[network.basis.profile];
  const row = profile.fixtureRows[fixture.kind].supply;
  if (row === null) return 0;
  const least = lookUp(profile.supplySizes, row, 'size').printed;
  const { homeRunLength, homeRunPressure, homeRunLeastSize } = profile.limits;
  const homeRun =
    isHomeRun(network, fixture, at) &&
    !isOver(network.length[at]!, citeValue(homeRunLength).value) &&
    streetPressure >= citeValue(homeRunPressure).value;
  return homeRun ? Math.min(least, homeRunLeastSize.printed) : least;
}

/** Whether a run is a line from a manifold to a fixture of a kind that the code lets it be smaller for. */
export function isHomeRun(network: Network, fixture: Fixture, at: number): boolean {
  return (
    deviceOf(network, network.parent[at]!)?.device === 'manifold' &&
    profiles[network.basis.profile].homeRunKinds.includes(fixture.kind)
  );
}
