import { jobChanges } from '../../engine/index.ts';
import type { Job } from '../../engine/job/job.ts';
import { readAddress } from '../../views/job-address.ts';
import { changeSummary } from '../../views/text/change-text.ts';
import type { Problems } from '../../views/workbench.ts';
import { readJob } from '../document/read-job.ts';
import { writeJob } from '../document/write-job.ts';
import type { Edited } from '../edits/edited.ts';
import type { Store } from '../storage/database.ts';
import type { Draft, Saved } from '../storage/job-head.ts';
import { saveJob } from '../storage/job-store.ts';
import { advanceTrial } from '../storage/trial-store.ts';
import { type Computed, computeJob } from './compute-job.ts';
import type { OpenJobs } from './open-jobs.ts';
import type { OpenJob } from './workbench.tsx';

export type SavedEdit =
  | { readonly ok: true; readonly open: OpenJob }
  | { readonly ok: false; readonly why: 'refused'; readonly problems: Problems }
  | { readonly ok: false; readonly why: 'clash' };

/**
 * Saves a job that was edited from an open one, if it computes, if its file can be read back, and if nobody saved
 * another since. Otherwise nothing is changed.
 */
export async function saveEdit(
  store: Store,
  jobs: OpenJobs,
  before: OpenJob,
  edited: Edited,
  now: Date,
): Promise<SavedEdit> {
  if (before.beside?.kind === 'past') return { ok: false, why: 'refused', problems: { '': pastText } };
  if (!edited.ok) return { ok: false, why: 'refused', problems: edited.problems };
  const document = writeJob(edited.job);
  if (document === before.document) return { ok: true, open: before };
  const checked = await checkJob(edited.job, document);
  if (!checked.ok) return { ok: false, why: 'refused', problems: { '': checked.sentences.join(' ') } };
  const change = changeSummary(jobChanges(before.job, edited.job), edited.job.chosen);
  const draft = { name: edited.job.name, document, change };
  const saved = await saveAt(store, before, draft, now);
  if (!saved.ok) return { ok: false, why: 'clash' };
  return { ok: true, open: jobs.follow(before, saved.revision, document, checked.computed) };
}

const pastText =
  'This is an earlier revision, which stays as it is. Go back to it, or change the job as it is now.';

async function saveAt(store: Store, { id, revision }: OpenJob, draft: Draft, now: Date): Promise<Saved> {
  const address = readAddress(id);
  return address.at === 'trial'
    ? await advanceTrial(store, address.trial, revision, draft, now)
    : await saveJob(store, address.job, revision, draft, now);
}

/** Whatever a form let through, a file that could not be read again is never kept. */
async function checkJob(job: Job, document: string): Promise<Computed> {
  const read = await readJob(document);
  return read.ok ? computeJob(job) : { ok: false, sentences: read.problems.map((problem) => `${problem}.`) };
}
