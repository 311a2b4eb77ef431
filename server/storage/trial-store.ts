import type { Store } from './database.ts';
import { inTransaction } from './in-transaction.ts';
import {
  clashed,
  type Draft,
  holdJob,
  insertRevision,
  type JobHead,
  type Moved,
  packDraft,
  type Saved,
} from './job-head.ts';
import { newId } from './new-id.ts';
import { readSummary } from './revision-store.ts';
import type { TrialRow } from './schema.ts';

/**
 * Starts a trial: changes made from the revision that a job shows, which the job does not show until they are kept.
 * Its steps are revisions of the job, read with `readRevision(db, job, trial.head)`.
 *
 * @param base the revision that the reader sees
 * @returns the trial's id, or undefined where there is no such revision in the job's own history
 */
export async function startTrial(
  db: Store,
  job: string,
  base: number,
  now: Date,
  author: string | null = null,
): Promise<string | undefined> {
  const id = `t${newId()}`;
  return await inTransaction(db, async (change) => {
    if ((await holdJob(change, job)) === undefined) return undefined;
    if ((await readSummary(change, job, base))?.trial !== null) return undefined;
    const started_at = now.toISOString();
    await change.insertInto('trial').values({ id, job, base, head: base, started_at, author }).execute();
    return id;
  });
}

/** One trial, or undefined where it was kept, dropped or never started. */
export async function readTrial(db: Store, id: string): Promise<TrialRow | undefined> {
  return await db.selectFrom('trial').selectAll().where('id', '=', id).executeTakeFirst();
}

/** The trials of a job, the latest first. */
export async function listTrials(db: Store, job: string): Promise<readonly TrialRow[]> {
  return await db
    .selectFrom('trial')
    .selectAll()
    .where('job', '=', job)
    .orderBy('started_at', 'desc')
    .orderBy('id')
    .execute();
}

/**
 * Adds a step to a trial.
 *
 * @param seen the trial's head when the change was made
 * @returns the number of the new step, the trial's head from now on; a clash where the trial has moved on or is gone
 */
export async function advanceTrial(
  db: Store,
  id: string,
  seen: number,
  draft: Draft,
  now: Date,
): Promise<Saved> {
  const packed = await packDraft(draft);
  return await withTrial(db, id, async (change, trial, head) => {
    if (trial.head !== seen) return clashed;
    const number = head.revisions + 1;
    await insertRevision(change, { job: trial.job, number, parent: seen, trial: id }, packed, now);
    await change.updateTable('job').set({ revisions: number }).where('id', '=', trial.job).execute();
    await change.updateTable('trial').set({ head: number }).where('id', '=', id).execute();
    return { ok: true, revision: number };
  });
}

/**
 * Takes a trial one step back; never before the revision from which it started.
 *
 * @param seen the trial's head when undo was asked for
 */
export async function undoTrial(db: Store, id: string, seen: number): Promise<Moved> {
  return await turnTrial(db, id, seen, async (change, { job, base, head }) =>
    head === base ? undefined : ((await readSummary(change, job, head))?.parent ?? undefined),
  );
}

/**
 * Takes a trial one step forward again, to the latest that was made from the seen one.
 *
 * @param seen the trial's head when redo was asked for
 */
export async function redoTrial(db: Store, id: string, seen: number): Promise<Moved> {
  return await turnTrial(db, id, seen, async (change, trial) => {
    const next = await change
      .selectFrom('revision')
      .select('number')
      .where('job', '=', trial.job)
      .where('trial', '=', id)
      .where('parent', '=', trial.head)
      .orderBy('number', 'desc')
      .limit(1)
      .executeTakeFirst();
    return next?.number;
  });
}

async function turnTrial(
  db: Store,
  id: string,
  seen: number,
  where: (change: Store, trial: TrialRow) => Promise<number | undefined>,
): Promise<Moved> {
  return await withTrial<Moved>(db, id, async (change, trial) => {
    if (trial.head !== seen) return clashed;
    const to = await where(change, trial);
    if (to === undefined) return { ok: false, clash: false };
    await change.updateTable('trial').set({ head: to }).where('id', '=', id).execute();
    return { ok: true, revision: to };
  });
}

/**
 * Lets the job show the last step of a trial, which ends. Each step is a revision that undo takes back by itself.
 *
 * @returns a clash, and nothing changed, where the job no longer shows the revision from which the trial started:
 * merge the two documents (base `trial.base`), save that on the job, and drop the trial
 */
export async function keepTrial(db: Store, id: string, now: Date): Promise<Saved> {
  return await withTrial(db, id, async (change, trial, head) => {
    const tip = await readSummary(change, trial.job, trial.head);
    if (head.revision !== trial.base || tip === undefined) return clashed;
    await change
      .updateTable('revision')
      .set({ trial: null })
      .where('job', '=', trial.job)
      .where('trial', '=', id)
      .execute();
    await change
      .updateTable('job')
      .set({ revision: tip.number, tip: tip.number, name: tip.job_name, updated_at: now.toISOString() })
      .where('id', '=', trial.job)
      .execute();
    await change.deleteFrom('trial').where('id', '=', id).execute();
    return { ok: true, revision: tip.number };
  });
}

/** Ends a trial and removes its steps. @returns whether there was such a trial */
export async function dropTrial(db: Store, id: string): Promise<boolean> {
  const dropped = await withTrial(db, id, async (change, trial) => {
    await change.deleteFrom('revision').where('job', '=', trial.job).where('trial', '=', id).execute();
    await change.deleteFrom('trial').where('id', '=', id).execute();
    return { ok: true, revision: trial.base };
  });
  return dropped.ok;
}

/** Holds the job of a trial, then reads the trial: nothing else changes either until `work` is done. */
async function withTrial<Result>(
  db: Store,
  id: string,
  work: (change: Store, trial: TrialRow, head: JobHead) => Promise<Result>,
): Promise<Result | typeof clashed> {
  const found = await readTrial(db, id);
  if (found === undefined) return clashed;
  return await inTransaction(db, async (change) => {
    const head = await holdJob(change, found.job);
    const trial = await readTrial(change, id);
    return head === undefined || trial === undefined ? clashed : await work(change, trial, head);
  });
}
