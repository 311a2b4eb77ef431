import { markedId } from './drawing-svg.tsx';
import { runRowId } from './run-ids.ts';

/** Where a run is edited. */
export function runAddress(job: string, run: string): string {
  return `/jobs/${encodeURIComponent(job)}#${encodeURIComponent(runRowId(run))}`;
}

/** Where a run is marked in the drawing. */
export function drawnRunAddress(job: string, run: string): string {
  return `/jobs/${encodeURIComponent(job)}/riser?run=${encodeURIComponent(run)}#${markedId}`;
}
