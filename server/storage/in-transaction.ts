import type { Store } from './database.ts';

/** Does all of `work` or nothing; within a transaction that has begun already, as a part of it. */
export async function inTransaction<Result>(
  db: Store,
  work: (change: Store) => Promise<Result>,
): Promise<Result> {
  return db.isTransaction ? await work(db) : await db.transaction().execute(work);
}
