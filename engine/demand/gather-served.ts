import type { Gathered } from './gather-units.ts';

/** What each run serves, gathered from all that it feeds; by position, flows in m3/s. */
export interface Served {
  readonly units: Float64Array;
  /** Flow that runs for long. */
  readonly continuous: Float64Array;
  /** Own flows of the fixtures counted in units: the largest, and their sum. */
  readonly largest: Float64Array;
  readonly ownSum: Float64Array;
  /** 1 where a flushometer valve is among them. */
  readonly valve: Uint8Array;
}

/** Table values have two decimals; sums of them are brought back from the noise of binary fractions. */
const grain = 1e6;

/**
 * Sums what each run adds over all the runs that it feeds, in one pass from the taps to the street.
 *
 * @param parent position of the feeding run, which stands before it; -1 for the first
 */
export function gatherServed(parent: Int32Array, added: Gathered): Served {
  const units = Float64Array.from(added.unitsAdded);
  const continuous = Float64Array.from(added.continuousAdded);
  const largest = Float64Array.from(added.ownFlow);
  const ownSum = Float64Array.from(added.ownFlowAdded);
  const valve = Uint8Array.from(added.flushometer);
  for (let at = parent.length - 1; at >= 0; at--) {
    units[at] = Math.round(units[at]! * grain) / grain;
    const above = parent[at]!;
    if (above < 0) continue;
    units[above]! += units[at]!;
    continuous[above]! += continuous[at]!;
    ownSum[above]! += ownSum[at]!;
    if (largest[at]! > largest[above]!) largest[above] = largest[at]!;
    if (valve[at] === 1) valve[above] = 1;
  }
  return { units, continuous, largest, ownSum, valve };
}
