import type { RunVelocity } from '../engine/checks/run-velocities.ts';
import type { Job, Run } from '../engine/job/job.ts';
import type { Report } from '../engine/network/report.ts';
import type { SupplyCurve } from '../engine/network/supply-curve.ts';
import type { ShownPath } from './workbench.ts';

/** One of two staircases that stand side by side: its path, and the runs and the pressure that the path begins with. */
export interface PairedPath {
  readonly letter: 'A' | 'B';
  readonly path: ShownPath;
  /** Which state of the job it is of, where a trial stands beside what it started from. */
  readonly when?: 'before' | 'as tried';
  readonly runs: readonly Run[];
  /** Pressure at the street under demand, Pa. */
  readonly start: number;
}

/** Asks for the path of staircase B as it was before the trial. */
export const beforeTrial = 'before';

/** What the pictures of one scheme are drawn from. */
export interface Pictures {
  readonly id: string;
  readonly job: Job;
  readonly report: Report;
  /** Whether the job is one that is tried, beside what the trial started from. */
  readonly tried: boolean;
  /** `undefined` where the scheme serves no fixture. */
  readonly pair: readonly [PairedPath, PairedPath] | undefined;
  readonly supply: SupplyCurve;
  readonly velocities: readonly RunVelocity[];
  /** A sentence where a path that was asked for is not there; else empty. */
  readonly notice: string;
}
