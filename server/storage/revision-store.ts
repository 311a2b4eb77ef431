import type { Store } from './database.ts';
import { unpackText } from './packed-text.ts';
import { commonAncestor, lineOf, type RevisionLink } from './revision-links.ts';
import type { RevisionRow } from './schema.ts';

/** A revision without its document: number, parent, when, what changed, its name and who made it, the trial that it is a step of. */
export type RevisionSummary = Omit<RevisionRow, 'document' | 'job'>;

export type Revision = RevisionSummary & { readonly document: string };

const summary = ['number', 'parent', 'job_name', 'saved_at', 'change', 'name', 'author', 'trial'] as const;

/**
 * The revisions of a job, the latest number first, with those that undo left behind; steps of trials that were not
 * kept are left out.
 */
export async function listRevisions(db: Store, job: string): Promise<readonly RevisionSummary[]> {
  return await db
    .selectFrom('revision')
    .select(summary)
    .where('job', '=', job)
    .where('trial', 'is', null)
    .orderBy('number', 'desc')
    .execute();
}

/** One revision without its document, a trial's as well; undefined where there is none. */
export async function readSummary(
  db: Store,
  job: string,
  number: number,
): Promise<RevisionSummary | undefined> {
  return await db
    .selectFrom('revision')
    .select(summary)
    .where('job', '=', job)
    .where('number', '=', number)
    .executeTakeFirst();
}

/** One revision with its document, a trial's as well; undefined where there is none. */
export async function readRevision(db: Store, job: string, number: number): Promise<Revision | undefined> {
  const row = await db
    .selectFrom('revision')
    .select([...summary, 'document'])
    .where('job', '=', job)
    .where('number', '=', number)
    .executeTakeFirst();
  return row === undefined ? undefined : { ...row, document: await unpackText(row.document) };
}

/** Gives a revision a name, or with null takes it away. @returns whether there is such a revision */
export async function nameRevision(
  db: Store,
  job: string,
  number: number,
  name: string | null,
): Promise<boolean> {
  const result = await db
    .updateTable('revision')
    .set({ name })
    .where('job', '=', job)
    .where('number', '=', number)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n;
}

/** Number and parent of each revision up to `highest`, steps of trials included. */
export async function revisionLinks(
  db: Store,
  job: string,
  highest: number,
): Promise<readonly RevisionLink[]> {
  return await db
    .selectFrom('revision')
    .select(['number', 'parent'])
    .where('job', '=', job)
    .where('number', '<=', highest)
    .execute();
}

/** A revision of a job and those that it was made from, the latest first: its history without what was undone. */
export async function revisionLine(db: Store, job: string, number: number): Promise<readonly number[]> {
  return lineOf(await revisionLinks(db, job, number), number);
}

/**
 * The base of a three-way merge: the latest revision from which both `mine` and `theirs` were made.
 *
 * @returns its number, or undefined where one of the two is no revision of the job
 */
export async function mergeBase(
  db: Store,
  job: string,
  mine: number,
  theirs: number,
): Promise<number | undefined> {
  return commonAncestor(await revisionLinks(db, job, Math.max(mine, theirs)), mine, theirs);
}
