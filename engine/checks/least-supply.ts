import { citeValue, lookUp } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { deviceOf } from '../network/device-of.ts';
import type { Inlet, Network } from '../network/network.ts';

/** An individual line: all that lies between a manifold and one inlet. */
export interface HomeRun {
  /** Developed length, m. */
  readonly length: number;
  /** Its smallest nominal size, inches. */
  readonly inches: number;
}

/**
 * The individual line that ends at an inlet, from the last manifold on its path, if it serves nothing else; the stub
 * of an arrester on the way does not end it.
 */
export function homeRunOf(network: Network, inlet: Inlet): HomeRun | undefined {
  let length = 0;
  let inches = Number.POSITIVE_INFINITY;
  const index = indexOf(network.inlets, inlet);
  const before = network.inlets[index - 1]?.run ?? -1;
  const after = network.inlets[index + 1]?.run ?? network.size;
  for (let at = inlet.run; at >= 0; at = network.parent[at]!) {
    if (before >= at || after < network.subtreeEnd[at]!) return undefined;
    length += network.length[at]!;
    inches = Math.min(inches, nominalInches(network.runs[at]!.size));
    if (deviceOf(network, network.parent[at]!)?.device === 'manifold') return { length, inches };
  }
  return undefined;
}

/** Inlets stand in the order of their runs, one to a run. */
function indexOf(inlets: readonly Inlet[], { run }: Inlet): number {
  let low = 0;
  let high = inlets.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (inlets[middle]!.run < run) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Least nominal size, in inches, of the run that ends at an inlet: the code's supply size, or that of an individual
 * line where there is one of a kind that may be smaller, short enough, and the street gives enough (Pa, under flow);
 * 0 where the code prints no size.
 */
export function leastSupply(network: Network, inlet: Inlet, streetPressure: number): number {
  const { kind } = inlet.fixture;
  const profile = profiles[network.basis.profile];
  const row = profile.fixtureRows[kind].supply;
  if (row === null) return 0;
  const least = lookUp(profile.supplySizes, row, 'size').printed;
  const line = homeRunOf(network, inlet);
  if (line === undefined || !profile.homeRunKinds.includes(kind)) return least;
  const { homeRunLength, homeRunPressure, homeRunLeastSize, homeRunUsualSize } = profile.limits;
  const holds =
    line.length <= citeValue(homeRunLength).value && streetPressure >= citeValue(homeRunPressure).value;
  return holds ? Math.min(least, homeRunLeastSize.printed) : Math.max(least, homeRunUsualSize.printed);
}
