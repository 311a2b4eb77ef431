import type { JobChange } from '../../engine/compare/job-changes.ts';
import type { Clash } from '../../engine/compare/merge-jobs.ts';
import type { Rename } from '../../engine/compare/renames.ts';
import type { UnitSystem } from '../../engine/job/job.ts';
import type { Defect } from '../../engine/network/defect.ts';
import { changeSentences, changeSummary } from './change-text.ts';
import { defectText } from './defect-text.ts';

/**
 * Both sides of what could not be joined, in words.
 *
 * @param chosen id of the scheme whose runs need no more than their name
 */
export function clashText(clashes: readonly Clash[], chosen: string): string {
  const tell = (side: keyof Clash) =>
    changeSentences(
      clashes.flatMap((clash) => clash[side]),
      chosen,
    ).join('; ');
  return `Not saved: the same was changed elsewhere. Yours: ${tell('mine')}. Elsewhere: ${tell('theirs')}.`;
}

/** Why two changes that do not clash by themselves make no tree together. */
export function noTreeText(
  theirs: readonly JobChange[],
  defects: readonly Defect[],
  chosen: string,
  units: UnitSystem,
): string {
  const reasons = defects.map((defect) => defectText(defect, units)).join(' ');
  return `Not saved: it does not go together with a change made elsewhere (${changeSummary(theirs, chosen)}). ${reasons}`;
}

/** What was joined with an edit, and what had to take another name for it. */
export function mergedText(theirs: readonly JobChange[], renames: readonly Rename[], chosen: string): string {
  const called = renames.map(({ from, to }) => ` Your ${from} is called ${to} now, for that name was taken.`);
  return `Saved, and merged with a change made elsewhere: ${changeSummary(theirs, chosen)}.${called.join('')}`;
}
