import { sources } from './sources.ts';
import type { Locator, Source, Verification } from './table.ts';

const checkedOn = '2026-11-25';

/** Rules that no code states: the trade's, the job's and this project's own. A code's stand in its profile. */
export const rules = {
  /** What the job states for a fixture in place of the code's table. */
  makerNeed: {
    source: sources.job,
    at: { section: "the fixture's own pressure", checkedOn },
    verified: 'common-practice',
  },
  /** Below the pressure of the air no tap runs. */
  pressureLeft: { source: sources.hydrostatics, at: { checkedOn }, verified: 'computed' },
  /** Demand beyond the flow of the test: the relation is carried past what was measured. */
  testRange: { source: sources.hightap, at: { checkedOn }, verified: 'common-practice' },
  /** A flow beyond the last point of a curve is extrapolated, and said. */
  curveRange: { source: sources.hightap, at: { checkedOn }, verified: 'common-practice' },
  /** The rises of the runs must lead to the height at which the schedule has the fixture. */
  heights: { source: sources.hightap, at: { checkedOn }, verified: 'common-practice' },
  deadEnd: { source: sources['trade-practice'], at: { checkedOn }, verified: 'common-practice' },
  /** More lines than the manifold has ports for. */
  manifoldPorts: { source: sources['trade-practice'], at: { checkedOn }, verified: 'common-practice' },
  /** A limit of velocity that the job sets for itself. */
  ownVelocity: { source: sources.job, at: { checkedOn }, verified: 'common-practice' },
  /** Demand over what the well pump gives at its cut-in pressure. */
  pumpFlow: { source: sources['trade-practice'], at: { checkedOn }, verified: 'common-practice' },
} as const satisfies Record<string, { source: Source; at: Locator; verified: Verification }>;
