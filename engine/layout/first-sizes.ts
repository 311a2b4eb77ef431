import { arresterSizes } from '../../tables/devices/arresters.ts';
import { manifoldCv } from '../../tables/devices/curves.ts';
import { meterLimits } from '../../tables/devices/meters.ts';
import { citeValue, hasCell, lookUp } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { seldomStocked } from '../../tables/pipe/nominal-size.ts';
import { profiles } from '../../tables/profiles.ts';
import { velocityLimit } from '../checks/judge-velocity.ts';
import { leastSupply } from '../checks/least-supply.ts';
import { servesSeveral } from '../demand/design-flow.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { risingSizes } from '../hydraulics/rising-sizes.ts';
import { velocity } from '../hydraulics/velocity.ts';
import type { RunEnd } from '../job/job.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';

/** The sizes that a layout's owner has fixed. */
export interface FixedSizes {
  /** By position: a run's own size, or undefined. */
  readonly run: readonly (string | undefined)[];
  /** The most behind the header. */
  readonly main: string | undefined;
  /** By position: whether the run stands before the first main. */
  readonly entry: readonly boolean[];
}

/**
 * A first guess at the size of every run, by position: the least stocked size in which the water is not too fast, no
 * smaller than what a run feeds, than the code's least for the fixture at its end, than the code's least service, or
 * than 1/2 in where it serves several fixtures (common practice, no source). Pressure is not asked: that is what
 * sizing at least cost is for. A fixed size stays; no run behind the header is larger than the fixed main.
 */
export function firstSizes(network: Network, solution: Solution, fixed: FixedSizes): string[] {
  const { size, runs, parent, inlets } = network;
  const profile = profiles[network.basis.profile];
  const least = new Float64Array(size);
  // No street pressure is promised here, so that no line of a manifold is smaller than the table's supply.
  for (const inlet of inlets) least[inlet.run] = leastSupply(network, inlet, 0);
  const service = citeValue(profile.limits.minimumService).printed;
  const most = fixed.main === undefined ? Number.POSITIVE_INFINITY : nominalInches(fixed.main);
  const sizes = new Array<string>(size);
  for (let at = size - 1; at >= 0; at--) {
    const { material, end } = runs[at]!;
    const floor = Math.max(
      least[at]!,
      fixed.entry[at] && runs[at]!.from === 'street' ? service : 0,
      servesSeveral(solution.ownSum[at]!, solution.largest[at]!) ? nominalInches('1/2') : 0,
      stubInches(end),
    );
    const cap = fixed.entry[at] ? Number.POSITIVE_INFINITY : Math.max(most, floor);
    const stocked = risingSizes(pipeDimensions[material].rows).filter((name) => !seldomStocked.has(name));
    const allowed = stocked.filter((name) => nominalInches(name) <= cap);
    const limit = velocityLimit(network, at).value;
    const slow = (name: string): boolean => {
      const bore = lookUp(pipeDimensions[material], name, 'bore').value;
      return velocity.compute({ Q: solution.flow[at]!, d: bore }) <= limit;
    };
    const chosen = allowed.find((name) => nominalInches(name) >= floor && slow(name)) ?? allowed.at(-1)!;
    sizes[at] = fixed.run[at] ?? chosen;
    const above = parent[at]!;
    // An arrester or a tank carries no flow and does not speak for the pipe that it stands on.
    if (above >= 0 && solution.flow[at]! > 0)
      least[above] = Math.max(least[above]!, nominalInches(sizes[at]!));
  }
  return sizes;
}

/** Pipe to an arrester has the arrester's own size; to a heater or an expansion tank 3/4 in (common practice, no source). */
function stubInches(end: RunEnd | undefined): number {
  if (end === undefined || !('device' in end)) return 0;
  if (end.device === 'arrester') return lookUp(arresterSizes, end.size, 'connection').printed;
  return end.device === 'expansion-tank' || end.device === 'heater' ? nominalInches('3/4') : 0;
}

/**
 * What stands at the end of a run, in the size that the water asks for: a manifold by the code's capacity, an
 * arrester by the fixture units of the pipe that it stands on, a meter at four fifths of its safe maximum or less
 * (common practice, no source). Where none is large enough, the largest; the findings say so.
 */
export function sizedEnd(
  network: Network,
  solution: Solution,
  at: number,
  meterFixed: boolean,
): RunEnd | undefined {
  const { end, material } = network.runs[at]!;
  if (end === undefined || !('device' in end)) return end;
  const flow = solution.flow[at]!;
  switch (end.device) {
    case 'manifold': {
      const { manifoldCapacity } = profiles[network.basis.profile];
      const column = material.startsWith('copper') || material === 'galvanized' ? 'metallic' : 'plastic';
      const listed = risingSizes(manifoldCv.rows).filter((size) => hasCell(manifoldCapacity, size, column));
      const enough = listed.find((size) => lookUp(manifoldCapacity, size, column).value >= flow);
      return { ...end, size: enough ?? listed.at(-1)! };
    }
    case 'arrester': {
      const units = solution.units[network.parent[at]!]!;
      const sizes = Object.keys(arresterSizes.rows);
      const enough = sizes.find((size) => lookUp(arresterSizes, size, 'unitsUpTo').value >= units);
      return { ...end, size: enough ?? sizes.at(-1)! };
    }
    case 'meter': {
      if (meterFixed) return end;
      const sizes = risingSizes(meterLimits.rows);
      const enough = sizes.find((size) => 0.8 * lookUp(meterLimits, size, 'safeMaximum').value >= flow);
      return { ...end, size: enough ?? sizes.at(-1)! };
    }
    default:
      return end;
  }
}
