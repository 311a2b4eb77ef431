import { sql } from 'kysely';
import type { Store } from './database.ts';
import { isPostgres } from './dialect.ts';

/** "HTAP", the mark of the file's application in its header, and the number of the lock. */
const mark = 0x48_54_41_50;

/**
 * Lets one process at a time change the whole store until its transaction ends; the others wait here. To be the first
 * statement of the transaction, so that it sees what those before it left.
 */
export async function holdStore(change: Store): Promise<void> {
  if (isPostgres(change)) await sql`select pg_advisory_xact_lock(${sql.lit(mark)})`.execute(change);
  // Any write takes SQLite's one lock; this one needs no table.
  else await sql`pragma application_id = ${sql.lit(mark)}`.execute(change);
}
