import { type Kysely, sql } from 'kysely';

/** The table of jobs. `revision` counts saved changes, so that an edit made on an old page is noticed. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('job')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('revision', 'integer', (column) => column.notNull().check(sql`revision >= 1`))
    .addColumn('created_at', 'text', (column) => column.notNull())
    .addColumn('updated_at', 'text', (column) => column.notNull())
    .addColumn('opened_at', 'text', (column) => column.notNull())
    .execute();
  await db.schema.createIndex('job_opened_at').on('job').column('opened_at').execute();
}
