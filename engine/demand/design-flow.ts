import type { Network } from '../network/network.ts';
import { flowOfUnits } from './demand-table.ts';

/**
 * Design flow of every run, m3/s, from the taps to the street (design, section 4):
 *
 * 1. a run that serves one fixture carries that fixture's own flow: the table speaks of several at once;
 * 2. else fixture units, by the tank column, or the valve column where the run serves a flushometer valve;
 * 3. below the first row of the column the sum of the fixtures' own flows, up to that row's flow;
 * 4. never less than the largest fixture among them;
 * 5. plus the flow that runs for long;
 * 6. never less than any run it feeds: a group's value may be less than that of two of its fixtures, and the pipe
 *    before them still has to feed them.
 *
 * @param flow written over
 */
export function designFlows(network: Network, flow: Float64Array): void {
  const { size, parent, demandTable } = network;
  const { units, continuous, valve, largest, ownSum } = network.served;
  const { tank, valve: valveColumn, roundUp } = demandTable;
  flow.fill(0);
  for (let at = size - 1; at >= 0; at--) {
    let design = largest[at]!;
    if (servesSeveral(ownSum[at]!, design)) {
      const column = valve[at] === 1 ? valveColumn : tank;
      const table = flowOfUnits(column, units[at]!, roundUp);
      design = Math.max(design, table === 0 ? Math.min(ownSum[at]!, column.flow[0]!) : table);
    }
    design += continuous[at]!;
    // Until its turn comes, `flow` holds the largest flow among the runs that a run feeds.
    if (flow[at]! > design) design = flow[at]!;
    flow[at] = design;
    const above = parent[at]!;
    if (above >= 0 && design > flow[above]!) flow[above] = design;
  }
}

/** Whether more than one fixture stands behind a sum of own flows and the largest among them. */
export function servesSeveral(ownSum: number, largest: number): boolean {
  return ownSum > largest * (1 + 1e-9);
}
