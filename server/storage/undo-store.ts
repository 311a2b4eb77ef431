import type { Store } from './database.ts';
import { inTransaction } from './in-transaction.ts';
import { clashed, holdJob, type JobHead, type Moved } from './job-head.ts';
import { stepTowards } from './revision-links.ts';
import { type RevisionSummary, readSummary, revisionLinks } from './revision-store.ts';

/** What undo and redo would do to a job as it is now. */
export interface Turns {
  /** The revision shown, which undo would take back; undefined where it is the first. */
  readonly undo: RevisionSummary | undefined;
  /** The revision that redo would bring back; undefined where nothing was undone. */
  readonly redo: RevisionSummary | undefined;
}

/** What undo and redo would do; undefined where there is no such job. */
export async function turnsOf(db: Store, id: string): Promise<Turns | undefined> {
  const head = await db
    .selectFrom('job')
    .select(['revision', 'tip', 'revisions'])
    .where('id', '=', id)
    .executeTakeFirst();
  if (head === undefined) return undefined;
  const shown = await readSummary(db, id, head.revision);
  const next = await afterHead(db, id, head);
  return {
    undo: shown?.parent == null ? undefined : shown,
    redo: next === undefined ? undefined : await readSummary(db, id, next),
  };
}

/**
 * Lets a job show the revision that the seen one was made from. No revision is lost: redo leads forward again until
 * something else is saved, and the history keeps both.
 *
 * @param seen the revision shown when undo was asked for
 */
export async function undoJob(db: Store, id: string, seen: number, now: Date): Promise<Moved> {
  return await moveHead(db, id, seen, now, async (change) => {
    return (await readSummary(change, id, seen))?.parent ?? undefined;
  });
}

/**
 * Lets a job show the next revision on the way back to where undo began.
 *
 * @param seen the revision shown when redo was asked for
 */
export async function redoJob(db: Store, id: string, seen: number, now: Date): Promise<Moved> {
  return await moveHead(db, id, seen, now, async (change, head) => await afterHead(change, id, head));
}

async function afterHead(db: Store, id: string, { revision, tip }: JobHead): Promise<number | undefined> {
  return tip === revision ? undefined : stepTowards(await revisionLinks(db, id, tip), revision, tip);
}

async function moveHead(
  db: Store,
  id: string,
  seen: number,
  now: Date,
  where: (change: Store, head: JobHead) => Promise<number | undefined>,
): Promise<Moved> {
  return await inTransaction(db, async (change) => {
    const head = await holdJob(change, id);
    if (head?.revision !== seen) return clashed;
    const to = await where(change, head);
    const target = to === undefined ? undefined : await readSummary(change, id, to);
    if (target === undefined) return { ok: false, clash: false };
    await change
      .updateTable('job')
      .set({ revision: target.number, name: target.job_name, updated_at: now.toISOString() })
      .where('id', '=', id)
      .execute();
    return { ok: true, revision: target.number };
  });
}
