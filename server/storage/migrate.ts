import { type Kysely, sql } from 'kysely';
import * as jobs from './migrations/001-jobs.ts';
import * as priceBooks from './migrations/002-price-books.ts';
import * as revisions from './migrations/003-revisions.ts';
import type { Schema } from './schema.ts';

interface Migration {
  readonly name: string;
  readonly up: (db: Kysely<unknown>) => Promise<void>;
}

/** In the order in which they are applied; a released one is never changed. */
const migrations: readonly Migration[] = [
  { name: '001-jobs', up: jobs.up },
  { name: '002-price-books', up: priceBooks.up },
  { name: '003-revisions', up: revisions.up },
];

/**
 * Brings a store to the present shape, each migration in a transaction of its own.
 *
 * @throws when the store was written by a newer version, so that an older program never writes into it.
 */
export async function migrate(db: Kysely<Schema>): Promise<void> {
  await db.schema
    .createTable('migration')
    .ifNotExists()
    .addColumn('name', 'text', (column) => column.primaryKey())
    .addColumn('applied_at', 'text', (column) => column.notNull().defaultTo(sql`CURRENT_TIMESTAMP`))
    .execute();
  const applied = new Set((await db.selectFrom('migration').select('name').execute()).map((row) => row.name));
  const known = new Set(migrations.map((migration) => migration.name));
  for (const name of applied) {
    if (!known.has(name)) {
      throw new Error(
        `The store was written by a newer Hightap (it has the change ${name}). Use that version.`,
      );
    }
  }
  for (const migration of migrations) {
    if (applied.has(migration.name)) continue;
    await db.transaction().execute(async (transaction) => {
      await migration.up(transaction as unknown as Kysely<unknown>);
      await transaction.insertInto('migration').values({ name: migration.name }).execute();
    });
  }
}
