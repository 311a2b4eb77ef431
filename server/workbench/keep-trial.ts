import { changed } from '../edits/edited.ts';
import type { Store } from '../storage/database.ts';
import { dropTrial, keepTrial } from '../storage/trial-store.ts';
import type { OpenJobs } from './open-jobs.ts';
import { type SavedSeen, saveSeen } from './save-seen.ts';
import type { OpenJob } from './workbench.tsx';

/** An open trial by its id in the store. */
export interface OpenTrial {
  readonly trial: string;
  /** Id of the job that it is a trial of. */
  readonly job: string;
  readonly open: OpenJob;
  /** The revision that it started from. */
  readonly base: number;
}

/**
 * Saves what a trial changed as the job, and ends the trial. Where the job was changed since the trial started, the
 * two are merged; where they clash, both sides are told, and job and trial stay as they are. A trial that shows what it
 * started from has nothing to save.
 *
 * @returns undefined where the job is gone
 */
export async function keepTried(
  context: { readonly store: Store; readonly jobs: OpenJobs; readonly time: Date },
  { trial, job, open, base }: OpenTrial,
): Promise<SavedSeen | undefined> {
  const { store, jobs, time } = context;
  if (open.revision === base) {
    await dropTrial(store, trial);
    return await savedAs(jobs, job);
  }
  const kept = await keepTrial(store, trial, time);
  if (kept.ok) return await savedAs(jobs, job);
  const now = await jobs.open(job);
  if (!now.ok) return undefined;
  const { saved } = await saveSeen(context, now.open, base, () => changed(open.job));
  if (saved.ok) await dropTrial(store, trial);
  return saved;
}

async function savedAs(jobs: OpenJobs, job: string): Promise<SavedSeen | undefined> {
  const opened = await jobs.open(job);
  return opened.ok ? { ok: true, open: opened.open, merged: '' } : undefined;
}
