import { sources } from './sources.ts';
import type { Locator, Source, Verification } from './table.ts';

const checkedOn = '2026-11-25';

/** Rules that findings cite and that have no value of their own. */
export const rules = {
  /** A storage heater behind a check valve, reducing valve or backflow preventer. */
  thermalExpansion: {
    source: sources['ipc-2018'],
    at: { section: '607.3', checkedOn },
    verified: 'seen-secondary',
  },
  /** Arresters where quick-closing valves are. */
  waterHammer: {
    source: sources['irc-2021'],
    at: { section: 'P2903.5', checkedOn },
    verified: 'seen-secondary',
  },
  mainShutOff: {
    source: sources['irc-2021'],
    at: { section: 'P2903.9.1', checkedOn },
    verified: 'memory',
  },
  outdoorShutOff: {
    source: sources['irc-2021'],
    at: { section: 'P2903.10', checkedOn },
    verified: 'memory',
  },
  manifoldShutOff: {
    source: sources['irc-2021'],
    at: { section: 'P2903.8.5', checkedOn },
    verified: 'memory',
  },
  /** A vacuum breaker or other backflow preventer on every hose connection. */
  hoseConnection: {
    source: sources['irc-2021'],
    at: { section: 'P2902.4.3', checkedOn },
    verified: 'memory',
  },
  rating: {
    source: sources['irc-2021'],
    at: { section: 'P2906', checkedOn },
    verified: 'memory',
  },
  residual: {
    source: sources['irc-2021'],
    at: { table: 'P2903.1', checkedOn },
    verified: 'seen',
  },
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
