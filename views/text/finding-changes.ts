import type { Finding } from '../../engine/checks/finding.ts';
import type { Job } from '../../engine/job/job.ts';
import type { Report } from '../../engine/network/report.ts';
import { findingText } from './finding-text.ts';

interface Reported {
  readonly job: Job;
  readonly report: Pick<Report, 'findings'>;
}

/**
 * Findings, in words, that a change of the job ends and those that it brings. One that stays at its place with other
 * figures is neither.
 */
export function findingChanges(
  before: Reported,
  after: Reported,
): { readonly gone: readonly string[]; readonly come: readonly string[] } {
  return { gone: beyond(before, after), come: beyond(after, before) };
}

function beyond({ job, report }: Reported, other: Reported): readonly string[] {
  const known = new Set(other.report.findings.map(placeOf));
  return report.findings
    .filter((finding) => !known.has(placeOf(finding)))
    .map((finding) => findingText(finding, job).what);
}

/** The rule and the place that it is broken at. */
function placeOf(finding: Finding): string {
  const run = 'run' in finding ? finding.run : '';
  const fixture = 'fixture' in finding ? finding.fixture : '';
  const inlet = 'inlet' in finding ? finding.inlet : '';
  return [finding.code, run, fixture, inlet].join(' ');
}
