import type { RunVelocity } from '../engine/checks/run-velocities.ts';
import type { Job, Run } from '../engine/job/job.ts';
import type { Report } from '../engine/network/report.ts';
import type { SupplyCurve } from '../engine/network/supply-curve.ts';
import type { ShownPath } from './workbench.ts';

/** One of two staircases that stand side by side: its path, and the runs and the pressure that the path begins with. */
export interface PairedPath {
  readonly letter: 'A' | 'B';
  readonly path: ShownPath;
  readonly runs: readonly Run[];
  /** Pressure at the street under demand, Pa. */
  readonly start: number;
}

/** What the pictures of one scheme are drawn from. */
export interface Pictures {
  readonly id: string;
  readonly job: Job;
  readonly report: Report;
  /** `undefined` where the scheme serves no fixture. */
  readonly pair: readonly [PairedPath, PairedPath] | undefined;
  readonly supply: SupplyCurve;
  readonly velocities: readonly RunVelocity[];
  /** A sentence where a path that was asked for is not there; else empty. */
  readonly notice: string;
}
