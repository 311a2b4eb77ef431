import { type Kysely, sql } from 'kysely';
import { holdStore } from './hold-store.ts';
import { inTransaction } from './in-transaction.ts';
import * as jobs from './migrations/001-jobs.ts';
import * as priceBooks from './migrations/002-price-books.ts';
import * as revisions from './migrations/003-revisions.ts';
import * as bin from './migrations/004-bin.ts';
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
  { name: '004-bin', up: bin.up },
];

/** The names of the changes that this program knows, in their order. */
export const knownChanges: readonly string[] = migrations.map(({ name }) => name);

/**
 * Brings a store to the present shape: all changes that it lacks or none of them. Of several processes that start at
 * once the first does it.
 *
 * @param last for tests and restores: the last change that is made
 * @throws when the store was written by a newer version, so that an older program never writes into it.
 */
export async function migrate(db: Kysely<Schema>, last: string = migrations.at(-1)!.name): Promise<void> {
  await inTransaction(db, async (change) => {
    await holdStore(change);
    await change.schema
      .createTable('migration')
      .ifNotExists()
      .addColumn('name', 'text', (column) => column.primaryKey())
      .addColumn('applied_at', 'text', (column) => column.notNull().defaultTo(sql`CURRENT_TIMESTAMP`))
      .execute();
    const applied = new Set(
      (await change.selectFrom('migration').select('name').execute()).map((row) => row.name),
    );
    for (const name of applied) {
      if (!knownChanges.includes(name)) throw new NewerStore(name);
    }
    for (const { name, up } of migrations.slice(0, knownChanges.indexOf(last) + 1)) {
      if (applied.has(name)) continue;
      await up(change as unknown as Kysely<unknown>);
      await change.insertInto('migration').values({ name }).execute();
    }
  });
}

/** A store that an older program must not write into. */
export class NewerStore extends Error {
  constructor(change: string) {
    super(`The store was written by a newer Hightap (it has the change ${change}). Use that version.`);
  }
}
