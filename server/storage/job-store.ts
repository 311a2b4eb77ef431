import type { Store } from './database.ts';
import { inTransaction } from './in-transaction.ts';
import { clashed, type Draft, holdJob, insertRevision, packDraft, type Saved } from './job-head.ts';
import { newId } from './new-id.ts';
import { unpackText } from './packed-text.ts';
import type { JobRow } from './schema.ts';

export type JobSummary = Pick<JobRow, 'id' | 'name' | 'revision' | 'updated_at'>;

/** A job with the document of the revision that it shows. */
export type KeptJob = JobRow & { readonly document: string };

/** All jobs that are not in the bin, the last opened first. */
export async function listJobs(db: Store): Promise<readonly JobSummary[]> {
  return await db
    .selectFrom('job')
    .select(['id', 'name', 'revision', 'updated_at'])
    .where('binned_at', 'is', null)
    .orderBy('opened_at', 'desc')
    .orderBy('created_at')
    .orderBy('name')
    .execute();
}

/** Id of the job that was opened last, or undefined where there is none. */
export async function lastOpenedJob(db: Store): Promise<string | undefined> {
  const row = await db
    .selectFrom('job')
    .select('id')
    .where('binned_at', 'is', null)
    .orderBy('opened_at', 'desc')
    .orderBy('created_at')
    .limit(1)
    .executeTakeFirst();
  return row?.id;
}

/** One job with the document that it shows, or undefined where there is none. */
export async function readJobRow(db: Store, id: string): Promise<KeptJob | undefined> {
  const row = await db
    .selectFrom('job')
    .innerJoin('revision', (on) =>
      on.onRef('revision.job', '=', 'job.id').onRef('revision.number', '=', 'job.revision'),
    )
    .selectAll('job')
    .select('revision.document')
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .executeTakeFirst();
  return row === undefined ? undefined : { ...row, document: await unpackText(row.document) };
}

/** Revision and time of the last opening, without the document. */
export async function jobRevision(
  db: Store,
  id: string,
): Promise<Pick<JobRow, 'revision' | 'opened_at'> | undefined> {
  return await db
    .selectFrom('job')
    .select(['revision', 'opened_at'])
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .executeTakeFirst();
}

/** Keeps a new job and gives its id. `openedAt` decides which job is shown first. */
export async function createJob(
  db: Store,
  name: string,
  document: string,
  now: Date,
  openedAt: Date = now,
): Promise<string> {
  const id = newId();
  const at = now.toISOString();
  const packed = await packDraft({ name, document });
  await inTransaction(db, async (change) => {
    const first = { revision: 1, tip: 1, revisions: 1, price_book: null, binned_at: null };
    const times = { created_at: at, updated_at: at, opened_at: openedAt.toISOString() };
    await change
      .insertInto('job')
      .values({ id, name, ...first, ...times })
      .execute();
    await insertRevision(change, { job: id, number: 1, parent: null, trial: null }, packed, now);
  });
  return id;
}

/**
 * Keeps a changed document as a new revision made from the one that was seen, and lets the job show it. Where the
 * job shows another by now, that is a clash and nothing is changed.
 *
 * A revision's number stands for one document for ever, so a job that shows the seen number again, after an undo and
 * a redo, shows what was seen: saving on top of it loses nothing, and the number alone tells an old page.
 *
 * @param seen the revision that the change was made on
 */
export async function saveJob(db: Store, id: string, seen: number, draft: Draft, now: Date): Promise<Saved> {
  const packed = await packDraft(draft);
  const at = now.toISOString();
  return await inTransaction(db, async (change) => {
    const head = await holdJob(change, id);
    if (head?.revision !== seen) return clashed;
    const number = head.revisions + 1;
    await insertRevision(change, { job: id, number, parent: seen, trial: null }, packed, now);
    await change
      .updateTable('job')
      .set({ name: draft.name, revision: number, tip: number, revisions: number, updated_at: at })
      .where('id', '=', id)
      .execute();
    return { ok: true, revision: number };
  });
}

/** Notes when a job was opened; what it shows stays. */
export async function markOpened(db: Store, id: string, now: Date): Promise<void> {
  await db.updateTable('job').set({ opened_at: now.toISOString() }).where('id', '=', id).execute();
}
