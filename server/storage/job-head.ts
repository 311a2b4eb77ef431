import type { Store } from './database.ts';
import { packText } from './packed-text.ts';
import type { JobRow, RevisionRow } from './schema.ts';

/** What moves a job's head gives: the number of the revision shown then, or why nothing moved. */
export type Moved =
  | { readonly ok: true; readonly revision: number }
  /** `clash`: the job shows another revision than the reader saw, or is gone; else there was nothing to move to. */
  | { readonly ok: false; readonly clash: boolean };

export type Saved =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly clash: true };

export const clashed = { ok: false, clash: true } as const;

/** A document to be kept as a revision. */
export interface Draft {
  /** The job's name in the document. */
  readonly name: string;
  readonly document: string;
  /** What it changes, in a few words. */
  readonly change?: string | undefined;
  readonly author?: string | undefined;
}

export type JobHead = Pick<JobRow, 'revision' | 'tip' | 'revisions'>;

/**
 * Takes the row of a job until the transaction ends, and gives its head; undefined for one that is gone or in the bin. Whoever changes a job's head, its revisions
 * or its trials begins with this, so that of two the second sees what the first did; in both stores a write that
 * changes nothing holds the row.
 *
 * @param change within a transaction
 */
export async function holdJob(change: Store, id: string): Promise<JobHead | undefined> {
  return await change
    .updateTable('job')
    .set((row) => ({ revision: row.ref('revision') }))
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .returning(['revision', 'tip', 'revisions'])
    .executeTakeFirst();
}

/** What a revision's row has of a draft. Done before a job is held: packing a large document takes its time. */
export async function packDraft({ name, document, change, author }: Draft) {
  return {
    job_name: name,
    document: await packText(document),
    change: change ?? null,
    author: author ?? null,
  };
}

/** Keeps a packed draft as a revision of a job that is held, or made by the same transaction. */
export async function insertRevision(
  change: Store,
  key: Pick<RevisionRow, 'job' | 'number' | 'parent' | 'trial'>,
  draft: Awaited<ReturnType<typeof packDraft>>,
  now: Date,
): Promise<void> {
  await change
    .insertInto('revision')
    .values({ ...key, ...draft, name: null, saved_at: now.toISOString() })
    .execute();
}
