import type { Store } from './database.ts';
import { inTransaction } from './in-transaction.ts';

/** What can be in the bin: the names of its two tables. */
export type Binnable = 'job' | 'price_book';

export interface Binned {
  readonly kind: Binnable;
  readonly id: string;
  readonly name: string;
  readonly binned_at: string;
}

/** How long the bin keeps what is put into it. */
export const binDays = 30;

const day_ms = 24 * 60 * 60 * 1000;

/**
 * Puts a job or a price book into the bin, where nothing but the bin finds it. It stays whole: a job with its
 * revisions, a book with the jobs that use it.
 *
 * @returns whether there was such a thing out of the bin
 */
export async function putInBin(db: Store, kind: Binnable, id: string, now: Date): Promise<boolean> {
  const result = await db
    .updateTable(kind)
    .set({ binned_at: now.toISOString() })
    .where('id', '=', id)
    .where('binned_at', 'is', null)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n;
}

/** Takes something out of the bin again, as it was. @returns whether it was there */
export async function takeFromBin(db: Store, kind: Binnable, id: string): Promise<boolean> {
  const result = await db
    .updateTable(kind)
    .set({ binned_at: null })
    .where('id', '=', id)
    .where('binned_at', 'is not', null)
    .executeTakeFirst();
  return result.numUpdatedRows === 1n;
}

/** What is in the bin, the last put in first. */
export async function listBin(db: Store): Promise<readonly Binned[]> {
  const found = await Promise.all((['job', 'price_book'] as const).map((kind) => binnedOf(db, kind)));
  return found.flat().sort((a, b) => b.binned_at.localeCompare(a.binned_at) || a.name.localeCompare(b.name));
}

async function binnedOf(db: Store, kind: Binnable): Promise<readonly Binned[]> {
  const rows = await db
    .selectFrom(kind)
    .select(['id', 'name', 'binned_at'])
    .where('binned_at', 'is not', null)
    .execute();
  return rows.map(({ id, name, binned_at }) => ({ kind, id, name, binned_at: binned_at ?? '' }));
}

/**
 * Deletes something in the bin for good; jobs that used a price book use the one that ships.
 *
 * @param before only where it was put in at that time or earlier, as ISO 8601
 * @returns whether it was there
 */
export async function deleteForGood(
  db: Store,
  kind: Binnable,
  id: string,
  before = '9999',
): Promise<boolean> {
  return await inTransaction(db, async (change) => {
    const result = await change
      .deleteFrom(kind)
      .where('id', '=', id)
      .where('binned_at', '<=', before)
      .executeTakeFirst();
    if (result.numDeletedRows !== 1n) return false;
    if (kind === 'price_book') {
      await change.updateTable('job').set({ price_book: null }).where('price_book', '=', id).execute();
    }
    return true;
  });
}

/** Deletes for good what has been in the bin for {@link binDays} days. @returns how much that was */
export async function clearBin(db: Store, now: Date): Promise<number> {
  const before = new Date(now.getTime() - binDays * day_ms).toISOString();
  const old = (await listBin(db)).filter(({ binned_at }) => binned_at <= before);
  for (const { kind, id } of old) await deleteForGood(db, kind, id, before);
  return old.length;
}

/** The day on which something in the bin is deleted for good. */
export function lastDay(binned_at: string): Date {
  return new Date(Date.parse(binned_at) + binDays * day_ms);
}
