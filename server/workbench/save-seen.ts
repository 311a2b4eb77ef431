import { jobChanges, mergeJobs } from '../../engine/index.ts';
import { clashText, mergedText, noTreeText } from '../../views/text/clash-text.ts';
import type { Problems } from '../../views/workbench.ts';
import { changed, type Edited } from '../edits/edited.ts';
import type { Store } from '../storage/database.ts';
import type { OpenJobs } from './open-jobs.ts';
import { saveEdit } from './save-edit.ts';
import type { OpenJob } from './workbench.tsx';

export type SavedSeen =
  /** `merged`: what was joined with the edit; empty where nothing had been saved since. */
  | { readonly ok: true; readonly open: OpenJob; readonly merged: string }
  | { readonly ok: false; readonly why: 'refused'; readonly problems: Problems }
  /** `head`: the job as it is now. */
  | { readonly ok: false; readonly why: 'clash'; readonly head: OpenJob; readonly text: string };

/** What came of an edit, and the revision that the page shows from which it was posted. */
export interface Outcome {
  readonly shown: OpenJob;
  readonly saved: SavedSeen;
}

/** With this many saves by others between reading a job and saving it, something else is wrong. */
const mostTries = 20;

/**
 * Makes an edit on the revision that its reader saw. Where others saved since, the two are merged: by thing and by
 * field, and saved as one; what clashes is told with both sides and nothing is changed.
 *
 * @param now the job as it is
 * @param seen number of the revision that the reader saw; the job's own where it is left out
 */
export async function saveSeen(
  { store, jobs, time }: { readonly store: Store; readonly jobs: OpenJobs; readonly time: Date },
  now: OpenJob,
  seen: number | undefined,
  edit: (shown: OpenJob) => Edited | Promise<Edited>,
): Promise<Outcome> {
  const shown = seen === undefined ? now : await jobs.at(now, seen);
  if (shown === undefined) return { shown: now, saved: clash(now, unknownText) };
  const edited = await edit(shown);
  if (!edited.ok) return { shown, saved: { ok: false, why: 'refused', problems: edited.problems } };
  let head = now;
  for (let tries = 0; tries < mostTries; tries++) {
    const merged = head.revision === shown.revision ? undefined : mergeJobs(shown.job, edited.job, head.job);
    const { chosen } = head.job;
    if (merged?.ok === false) {
      const text =
        merged.clashes.length > 0
          ? clashText(merged.clashes, chosen)
          : noTreeText(jobChanges(shown.job, head.job), merged.defects, chosen, head.job.units);
      return { shown, saved: clash(head, text) };
    }
    const saved = await saveEdit(store, jobs, head, changed(merged?.job ?? edited.job), time);
    if (saved.ok) {
      const text =
        merged === undefined ? '' : mergedText(jobChanges(shown.job, head.job), merged.renames, chosen);
      return { shown, saved: { ...saved, merged: text } };
    }
    if (saved.why === 'refused') return { shown, saved };
    const opened = await jobs.open(head.id);
    if (!opened.ok) break;
    head = opened.open;
  }
  return { shown, saved: clash(head, unknownText) };
}

const unknownText =
  'Nothing was changed: this job was changed elsewhere since this page was loaded. It is shown as it is now; try again.';

function clash(head: OpenJob, text: string): SavedSeen {
  return { ok: false, why: 'clash', head, text };
}
