import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Run } from '../job/job.ts';

/** Which hot pipe is insulated: what the energy code of the basis names, all of it, or none. */
export type InsulationRule = 'code' | 'all-hot' | 'none';

/** @param from smallest nominal size that the code names, in inches */
export function isInsulated(
  { size }: Pick<Run, 'size'>,
  hot: boolean,
  rule: InsulationRule,
  from: number,
): boolean {
  if (!hot || rule === 'none') return false;
  return rule === 'all-hot' || nominalInches(size) >= from;
}
