import type { Cited } from '../../tables/table.ts';
import type { Finding } from '../checks/finding.ts';
import type { Inlet, Network } from './network.ts';
import type { Solution } from './solution.ts';

/** What is left at one inlet. */
export interface InletResult {
  readonly inlet: Inlet;
  readonly residual: number;
  readonly staticPressure: number;
  /** residual - required pressure; negative is short. */
  readonly margin: number;
}

/** One line of the ledger: pressure before, what is lost and to what, pressure after, Pa. */
export interface LedgerLine {
  readonly run: number;
  readonly what: 'pipe' | 'fittings' | 'device' | 'elevation';
  readonly loss: number;
  readonly before: number;
  readonly after: number;
}

/** Everything a page, a sheet or the command line shows of one scheme. */
export interface Report {
  readonly network: Network;
  readonly solution: Solution;
  /** Smallest margin first. */
  readonly inlets: readonly InletResult[];
  readonly worst: InletResult | undefined;
  readonly findings: readonly Finding[];
  /** No finding of severity `error`. */
  readonly passes: boolean;
  /** Table values on the worst path that nobody could verify. */
  readonly unverified: readonly Cited[];
}
