import { type Kysely, PostgresAdapter } from 'kysely';

/** Whether a store is PostgreSQL's; else it is SQLite's. Queries are the same for both, so few places ask. */
export function isPostgres<Tables>(db: Kysely<Tables>): boolean {
  return db.getExecutor().adapter instanceof PostgresAdapter;
}
