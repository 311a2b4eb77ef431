import type { Network } from '../network/network.ts';
import { flowOfUnits } from './demand-table.ts';

/** Demand of every run, by position. */
export interface Demand {
  readonly units: Float64Array;
  readonly continuous: Float64Array;
  readonly flow: Float64Array;
  /** 1 where the run serves a flushometer valve, itself or farther on. */
  readonly valve: Uint8Array;
  /** Own flows of the fixtures counted in units that the run serves: the largest, and their sum, m3/s. */
  readonly largest: Float64Array;
  readonly ownSum: Float64Array;
}

/** Table values have two decimals; sums of them are brought back from the noise of binary fractions. */
const grain = 1e6;

/**
 * Design flow of every run, gathered from the taps to the street (design, section 4):
 *
 * 1. a run that serves one fixture carries that fixture's own flow: the table speaks of several at once;
 * 2. else fixture units, by the tank column, or the valve column where the run serves a flushometer valve;
 * 3. below the first row of the column the sum of the fixtures' own flows, up to that row's flow;
 * 4. never less than the largest fixture among them;
 * 5. plus the flow that runs for long;
 * 6. never less than any run it feeds: a group's value may be less than that of two of its fixtures, and the pipe
 *    before them still has to feed them.
 */
export function gatherDemand(network: Network): Demand {
  const { size, parent, demandTable } = network;
  const units = Float64Array.from(network.unitsAdded);
  const continuous = Float64Array.from(network.continuousAdded);
  const largest = Float64Array.from(network.ownFlow);
  const ownSum = Float64Array.from(network.ownFlowAdded);
  const valve = Uint8Array.from(network.flushometer);
  const flow = new Float64Array(size);
  const { tank, valve: valveColumn, roundUp } = demandTable;

  for (let at = size - 1; at >= 0; at--) {
    const gathered = Math.round(units[at]! * grain) / grain;
    units[at] = gathered;
    const column = valve[at] === 1 ? valveColumn : tank;
    let design = largest[at]!;
    if (servesSeveral(ownSum[at]!, design)) {
      const table = flowOfUnits(column, gathered, roundUp);
      design = Math.max(design, table === 0 ? Math.min(ownSum[at]!, column.flow[0]!) : table);
    }
    design += continuous[at]!;
    if (flow[at]! > design) design = flow[at]!;
    flow[at] = design;

    const above = parent[at]!;
    if (above < 0) continue;
    units[above]! += gathered;
    continuous[above]! += continuous[at]!;
    ownSum[above]! += ownSum[at]!;
    if (largest[at]! > largest[above]!) largest[above] = largest[at]!;
    if (valve[at] === 1) valve[above] = 1;
    // Until its turn comes, `flow` holds the largest flow among the runs that a run feeds.
    if (design > flow[above]!) flow[above] = design;
  }
  return { units, continuous, flow, valve, largest, ownSum };
}

/** Whether more than one fixture stands behind a sum of own flows and the largest among them. */
export function servesSeveral(ownSum: number, largest: number): boolean {
  return ownSum > largest * (1 + 1e-9);
}
