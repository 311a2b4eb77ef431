import { type Kysely, PostgresAdapter, sql } from 'kysely';

/** The type of a column of bytes: the one word for which the two stores differ. */
export function blobOf(db: Kysely<unknown>) {
  return db.getExecutor().adapter instanceof PostgresAdapter ? sql`bytea` : sql`blob`;
}
