import { type Kysely, sql } from 'kysely';

/** The table of price books, and which of them a job uses: null stands for the book that ships. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('price_book')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('revision', 'integer', (column) => column.notNull().check(sql`revision >= 1`))
    .addColumn('created_at', 'text', (column) => column.notNull())
    .addColumn('updated_at', 'text', (column) => column.notNull())
    .execute();
  await db.schema.alterTable('job').addColumn('price_book', 'text').execute();
}
