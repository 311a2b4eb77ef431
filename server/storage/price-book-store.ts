import type { Store } from './database.ts';
import type { Saved } from './job-head.ts';
import { newId } from './new-id.ts';
import type { PriceBookRow } from './schema.ts';

export type PriceBookSummary = Omit<PriceBookRow, 'document' | 'binned_at'>;

/** Kept price books by name; the book that ships is none of them. */
export async function listPriceBooks(db: Store): Promise<readonly PriceBookSummary[]> {
  return await db
    .selectFrom('price_book')
    .select(['id', 'name', 'revision', 'created_at', 'updated_at'])
    .where('binned_at', 'is', null)
    .orderBy('name')
    .orderBy('created_at')
    .execute();
}

/** One price book with its document, or undefined where there is none. */
export async function readPriceBookRow(db: Store, id: string): Promise<PriceBookRow | undefined> {
  return await db
    .selectFrom('price_book')
    .selectAll()
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .executeTakeFirst();
}

/** Keeps a new price book and gives its id. */
export async function createPriceBook(db: Store, name: string, document: string, now: Date): Promise<string> {
  const id = newId();
  const at = now.toISOString();
  await db
    .insertInto('price_book')
    .values({ id, name, document, revision: 1, created_at: at, updated_at: at, binned_at: null })
    .execute();
  return id;
}

/** Replaces a price book if nobody changed it since `expectedRevision`; otherwise changes nothing. */
export async function savePriceBook(
  db: Store,
  id: string,
  expectedRevision: number,
  name: string,
  document: string,
  now: Date,
): Promise<Saved> {
  const revision = expectedRevision + 1;
  const result = await db
    .updateTable('price_book')
    .set({ name, document, revision, updated_at: now.toISOString() })
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .where('revision', '=', expectedRevision)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n ? { ok: true, revision } : { ok: false, clash: true };
}

/** Every job with the price book that it uses; null for the one that ships. */
export async function listJobBooks(
  db: Store,
): Promise<readonly { readonly id: string; readonly name: string; readonly price_book: string | null }[]> {
  return await db
    .selectFrom('job')
    .leftJoin('price_book', (on) =>
      on.onRef('price_book.id', '=', 'job.price_book').on('price_book.binned_at', 'is', null),
    )
    .select(['job.id', 'job.name', 'price_book.id as price_book'])
    .where('job.binned_at', 'is', null)
    .orderBy('job.name')
    .execute();
}

/** Id of the price book that a job uses, or null for the one that ships; a book in the bin is used by no job. */
export async function bookOfJob(db: Store, job: string): Promise<string | null> {
  const row = await db
    .selectFrom('job')
    .innerJoin('price_book', 'price_book.id', 'job.price_book')
    .select('price_book.id')
    .where('job.id', '=', job)
    .where('price_book.binned_at', 'is', null)
    .executeTakeFirst();
  return row?.id ?? null;
}

/** Lets a job use a price book, or with null the one that ships. @returns whether there was such a job */
export async function useBook(db: Store, job: string, book: string | null): Promise<boolean> {
  const result = await db
    .updateTable('job')
    .set({ price_book: book })
    .where('id', '=', job)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n;
}
