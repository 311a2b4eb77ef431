import type { Finding, FindingCode } from '../../../engine/checks/finding.ts';
import type { Job, Run } from '../../../engine/job/job.ts';
import { cold, fixture, ft, job, reportOf, run } from '../../jobs/written-job.ts';

/** The findings of one code in a job. */
export function findingsOf<C extends FindingCode>(code: C, written: Job): Extract<Finding, { code: C }>[] {
  return reportOf(written).findings.filter(
    (found): found is Extract<Finding, { code: C }> => found.code === code,
  );
}

/** A closet on a service that nothing is wrong with: 3 gpm of cold water, a shut-off, 1/2 in copper, 60 psi. */
export const quietRuns: readonly Run[] = [
  run('service', 'street', { material: 'copper-l', fittings: { 'ball-valve': 1 } }),
  run('branch', 'service', { size: '1/2', material: 'copper-l', length: ft(8), end: cold('closet') }),
];

export const closet = fixture('closet', 'water-closet-tank');

export const quiet: Job = job([closet], quietRuns);

/** A job like the quiet one, with some of its runs changed and others added. */
export function quietBut(
  changes: Readonly<Record<string, Partial<Run>>>,
  added: readonly Run[] = [],
  rest: Partial<Job> = {},
): Job {
  const runs = [...quietRuns.map((each) => ({ ...each, ...changes[each.id] })), ...added];
  return { ...quiet, ...rest, schemes: [{ id: 'only', name: 'Only', runs }] };
}
