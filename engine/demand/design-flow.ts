import type { Network } from '../network/network.ts';

/**
 * Design flow of every run, m3/s, from the taps to the street (design, section 4):
 *
 * 1. a run that serves one fixture carries that fixture's own flow: a method speaks of several at once;
 * 2. else the demand of its method, see demand.ts;
 * 3. never less than the largest fixture among them;
 * 4. plus the flow that runs for long, and that of fixtures which the method does not know;
 * 5. never less than any run it feeds. A group's value may be less than that of two of its fixtures, and a percentile
 *    over the busy time alone can fall when a fixture is added; the pipe before them still has to feed them.
 *
 * @param flow written over
 */
export function designFlows(network: Network, flow: Float64Array): void {
  const { size, parent, demand } = network;
  const { continuous, largest, ownSum } = network.served;
  flow.fill(0);
  for (let at = size - 1; at >= 0; at--) {
    let design = largest[at]!;
    if (servesSeveral(ownSum[at]!, design)) design = Math.max(design, demand.flow[at]!);
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
