import { type Kysely, sql } from 'kysely';
import { packText } from '../packed-text.ts';
import { blobOf } from './blob.ts';

/** The shape that this change finds and leaves, as far as rows are moved. */
type Moved = {
  job: { id: string; name: string; document: string; revision: number; updated_at: string; tip: number };
  revision: {
    job: string;
    number: number;
    parent: null;
    job_name: string;
    document: Uint8Array;
    saved_at: string;
  };
};

/**
 * Revisions of jobs as a tree, and trials. The document that a job had becomes its first known revision, under the
 * number that it had.
 */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('revision')
    .addColumn('job', 'text', (column) => column.notNull().references('job.id').onDelete('cascade'))
    .addColumn('number', 'integer', (column) => column.notNull().check(sql`number >= 1`))
    .addColumn('parent', 'integer', (column) => column.check(sql`parent < number`))
    .addColumn('job_name', 'text', (column) => column.notNull())
    .addColumn('document', blobOf(db), (column) => column.notNull())
    .addColumn('saved_at', 'text', (column) => column.notNull())
    .addColumn('change', 'text')
    .addColumn('name', 'text')
    .addColumn('author', 'text')
    .addColumn('trial', 'text')
    .addPrimaryKeyConstraint('revision_key', ['job', 'number'])
    .execute();
  await db.schema
    .createTable('trial')
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('job', 'text', (column) => column.notNull().references('job.id').onDelete('cascade'))
    .addColumn('base', 'integer', (column) => column.notNull())
    .addColumn('head', 'integer', (column) => column.notNull())
    .addColumn('started_at', 'text', (column) => column.notNull())
    .addColumn('author', 'text')
    .execute();
  await db.schema.createIndex('trial_job').on('trial').column('job').execute();
  for (const column of ['tip', 'revisions']) {
    await db.schema
      .alterTable('job')
      .addColumn(column, 'integer', (definition) => definition.notNull().defaultTo(1))
      .execute();
  }
  await moveDocuments(db.withTables<Moved>());
  await db.schema.alterTable('job').dropColumn('document').execute();
}

async function moveDocuments(db: Kysely<Moved>): Promise<void> {
  const ids = await db.selectFrom('job').select('id').execute();
  for (const { id } of ids) {
    const job = await db.selectFrom('job').selectAll().where('id', '=', id).executeTakeFirstOrThrow();
    await db
      .insertInto('revision')
      .values({
        job: id,
        number: job.revision,
        parent: null,
        job_name: job.name,
        document: await packText(job.document),
        saved_at: job.updated_at,
      })
      .execute();
  }
  await sql`update job set tip = revision, revisions = revision`.execute(db);
}
