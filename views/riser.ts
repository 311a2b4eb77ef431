import type { PlacedDrawing } from '../engine/drawing/placed.ts';
import type { Report } from '../engine/network/report.ts';

/** What the page of a riser shows. */
export interface RiserView {
  /** Address of the job behind `/jobs/`. */
  readonly id: string;
  readonly report: Report;
  /** Positions from the street to the worst inlet; none where no run ends at a fixture. */
  readonly worstPath: readonly number[];
  /** Or why there is none, in a sentence. */
  readonly drawing: PlacedDrawing | string;
  /** Position of the run that was asked for. */
  readonly marked: number | undefined;
  /** What could not be done of what was asked, in a sentence; empty where all could. */
  readonly notice: string;
}
