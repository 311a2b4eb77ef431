import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { migrate } from './migrate.ts';
import { type Opened, openDocument, openObject } from './open-document.ts';

const what = 'price book';

export type ReadPrices =
  | { readonly ok: true; readonly book: PriceBook }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Reads a price book: UTF-8 JSON of at most 20 MB, checked against the format. Every size, material, joint and kind
 * must be one that the tables know, and every item stands once.
 *
 * @returns the book, or what is wrong with the file: one sentence each, at most 20 and a count of the others
 */
export async function readPrices(file: string | Uint8Array): Promise<ReadPrices> {
  return await readOpened(openDocument(file, 'hightap-prices', what));
}

/** Reads a price book out of JSON that was parsed already and went through `parseFile`. */
export async function readPricesObject(value: unknown): Promise<ReadPrices> {
  return await readOpened(openObject(value, 'hightap-prices', what));
}

async function readOpened(opened: Opened): Promise<ReadPrices> {
  if (!opened.ok) return opened;
  // Loaded when the first book is read, as the schema of jobs is.
  const [{ pricesReader, pricesVersion }, { tellIssues }] = await Promise.all([
    import('./schema-prices.ts'),
    import('./tell-issues.ts'),
  ]);
  const migrated = migrate(opened.raw, pricesVersion, []);
  if (!migrated.ok) return { ok: false, problems: [migrated.problem] };

  const read = pricesReader.safeParse(migrated.job);
  if (read.success) return { ok: true, book: read.data };
  return { ok: false, problems: tellIssues(read.error.issues, migrated.job, what) };
}
