import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import type { Fixture } from '../job/job.ts';
import type { FixtureEnds, Meet } from './fixture-ends.ts';
import { largestAlong, sumAlong } from './sum-along.ts';

/** What each run adds to the flows that are gathered against the flow of water, m3/s; see Network. */
export interface AddedFlows {
  readonly continuousAdded: Float64Array;
  readonly ownFlow: Float64Array;
  readonly ownFlowAdded: Float64Array;
  readonly flushometer: Uint8Array;
}

/** Flows that each run serves, gathered from all that it feeds; by position, m3/s. */
export interface ServedFlows {
  /** Flow that runs for long, and that of fixtures which the demand method does not know. */
  readonly continuous: Float64Array;
  /** Own flows of the fixtures that the method counts: the largest, and their sum. */
  readonly largest: Float64Array;
  readonly ownSum: Float64Array;
  /** 1 where a flushometer valve is among them. */
  readonly valve: Uint8Array;
}

/**
 * Own flows of the fixtures behind each run, a fixture met by both its inlets counted once.
 *
 * @param counts whether the demand method counts a fixture; the flow of one that it does not is added whole
 */
export function gatherFlows(
  counts: (fixture: Fixture) => boolean,
  parent: Int32Array,
  ends: FixtureEnds,
  meet: Meet,
): AddedFlows & { readonly served: ServedFlows } {
  const size = parent.length;
  const continuousAdded = new Float64Array(size);
  const ownFlow = new Float64Array(size);
  const ownFlowAdded = new Float64Array(size);
  const flushometer = new Uint8Array(size);
  for (const [fixture, inlets] of ends) {
    const { count } = fixture;
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    const flow = inlets[0]!.requiredFlow;
    const counted = counts(fixture);
    const flowAdded = counted ? ownFlowAdded : continuousAdded;
    for (const { run } of inlets) {
      flowAdded[run]! += count * flow;
      if (!counted) continue;
      if (kind.flushometer) flushometer[run] = 1;
      ownFlow[run] = flow;
    }
    if (inlets.length === 2) flowAdded[meet(inlets[0]!.run, inlets[1]!.run)]! -= count * flow;
  }
  return {
    continuousAdded,
    ownFlow,
    ownFlowAdded,
    flushometer,
    served: {
      continuous: sumAlong(parent, continuousAdded),
      largest: largestAlong(parent, ownFlow),
      ownSum: sumAlong(parent, ownFlowAdded),
      valve: largestAlong(parent, flushometer),
    },
  };
}
