import type { Kysely } from 'kysely';

/** When a job or a price book was put into the bin; null for one that is not in it. */
export async function up(db: Kysely<unknown>): Promise<void> {
  for (const table of ['job', 'price_book']) {
    await db.schema.alterTable(table).addColumn('binned_at', 'text').execute();
  }
}
