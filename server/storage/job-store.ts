import { randomBytes } from 'node:crypto';
import type { Store } from './database.ts';
import type { JobRow } from './schema.ts';

export type JobSummary = Pick<JobRow, 'id' | 'name' | 'revision' | 'updated_at'>;

export type Saved =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly clash: true };

/** Eight characters of a-z, 0-9, _ and -, for the address line. */
function newId(): string {
  return randomBytes(6).toString('base64url').toLowerCase();
}

/** All jobs, the last opened first. */
export async function listJobs(db: Store): Promise<readonly JobSummary[]> {
  return await db
    .selectFrom('job')
    .select(['id', 'name', 'revision', 'updated_at'])
    .orderBy('opened_at', 'desc')
    .orderBy('created_at')
    .orderBy('name')
    .execute();
}

/** Id of the job that was opened last, or undefined in an empty store. */
export async function lastOpenedJob(db: Store): Promise<string | undefined> {
  const row = await db
    .selectFrom('job')
    .select('id')
    .orderBy('opened_at', 'desc')
    .orderBy('created_at')
    .limit(1)
    .executeTakeFirst();
  return row?.id;
}

/** One job with its document, or undefined where there is none. */
export async function readJobRow(db: Store, id: string): Promise<JobRow | undefined> {
  return await db.selectFrom('job').selectAll().where('id', '=', id).executeTakeFirst();
}

/** Revision and time of the last opening, without the document. */
export async function jobRevision(
  db: Store,
  id: string,
): Promise<Pick<JobRow, 'revision' | 'opened_at'> | undefined> {
  return await db.selectFrom('job').select(['revision', 'opened_at']).where('id', '=', id).executeTakeFirst();
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
  await db
    .insertInto('job')
    .values({
      id,
      name,
      document,
      revision: 1,
      created_at: now.toISOString(),
      updated_at: now.toISOString(),
      opened_at: openedAt.toISOString(),
    })
    .execute();
  return id;
}

/** Replaces a document if nobody changed it since `expectedRevision`; otherwise changes nothing. */
export async function saveJob(
  db: Store,
  id: string,
  expectedRevision: number,
  name: string,
  document: string,
  now: Date,
): Promise<Saved> {
  const result = await db
    .updateTable('job')
    .set({ name, document, revision: expectedRevision + 1, updated_at: now.toISOString() })
    .where('id', '=', id)
    .where('revision', '=', expectedRevision)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n
    ? { ok: true, revision: expectedRevision + 1 }
    : { ok: false, clash: true };
}

/** Notes when a job was opened; its document and revision stay. */
export async function markOpened(db: Store, id: string, now: Date): Promise<void> {
  await db.updateTable('job').set({ opened_at: now.toISOString() }).where('id', '=', id).execute();
}

/** @returns whether there was such a job */
export async function removeJob(db: Store, id: string): Promise<boolean> {
  const result = await db.deleteFrom('job').where('id', '=', id).executeTakeFirst();
  return result.numDeletedRows === 1n;
}
