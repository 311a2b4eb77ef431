import type { Job } from '../../engine/job/job.ts';
import type { Problems } from '../../views/workbench.ts';
import { readJob } from '../document/read-job.ts';
import { writeJob } from '../document/write-job.ts';
import type { Edited } from '../edits/edited.ts';
import type { Store } from '../storage/database.ts';
import { saveJob } from '../storage/job-store.ts';
import { type Computed, computeJob } from './compute-job.ts';
import type { OpenJobs } from './open-jobs.ts';
import type { OpenJob } from './workbench.tsx';

export type SavedEdit =
  | { readonly ok: true; readonly open: OpenJob }
  | { readonly ok: false; readonly why: 'refused'; readonly problems: Problems }
  | { readonly ok: false; readonly why: 'clash' };

/**
 * Saves an edited job, if it computes and if its file can be read back. Otherwise nothing is changed.
 *
 * @param expectedRevision what the reader saw
 */
export async function saveEdit(
  store: Store,
  jobs: OpenJobs,
  before: OpenJob,
  expectedRevision: number,
  edited: Edited,
  now: Date,
): Promise<SavedEdit> {
  if (expectedRevision !== before.revision) return { ok: false, why: 'clash' };
  if (!edited.ok) return { ok: false, why: 'refused', problems: edited.problems };
  const document = writeJob(edited.job);
  if (document === before.document) return { ok: true, open: before };
  const checked = await checkJob(edited.job, document);
  if (!checked.ok) return { ok: false, why: 'refused', problems: { '': checked.sentences.join(' ') } };
  const saved = await saveJob(store, before.id, before.revision, { name: edited.job.name, document }, now);
  if (!saved.ok) return { ok: false, why: 'clash' };
  const open: OpenJob = { id: before.id, revision: saved.revision, document, ...checked.computed };
  jobs.keep(open);
  return { ok: true, open };
}

/** Whatever a form let through, a file that could not be read again is never kept. */
async function checkJob(job: Job, document: string): Promise<Computed> {
  const read = await readJob(document);
  return read.ok ? computeJob(job) : { ok: false, sentences: read.problems.map((problem) => `${problem}.`) };
}
