import { type Kysely, type RawBuilder, sql } from 'kysely';
import { isPostgres } from '../dialect.ts';

/** The type of a column of bytes: the one word of the schema in which the two stores differ. */
export function blobOf(db: Kysely<unknown>): RawBuilder<unknown> {
  return isPostgres(db) ? sql`bytea` : sql`blob`;
}
