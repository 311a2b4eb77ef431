import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { putInBin } from '../../../server/storage/bin-store.ts';
import { openStore } from '../../../server/storage/database.ts';
import { createJob, readJobRow, saveJob } from '../../../server/storage/job-store.ts';
import { up } from '../../../server/storage/migrations/001-jobs.ts';
import {
  bookOfJob,
  createPriceBook,
  listJobBooks,
  listPriceBooks,
  readPriceBookRow,
  savePriceBook,
  useBook,
} from '../../../server/storage/price-book-store.ts';
import { testStore } from './test-store.ts';

const day = (number: number) => new Date(Date.UTC(2026, 0, number));

/** A store as the program made it when it knew no price books, with one job in it. */
async function storeOfFirstVersion(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'store-'));
  const database = new Database(join(folder, 'hightap.sqlite'));
  const db = new Kysely<unknown>({ dialect: new SqliteDialect({ database }) });
  await up(db);
  database.exec(`CREATE TABLE migration (name text primary key, applied_at text not null default CURRENT_TIMESTAMP);
    INSERT INTO migration (name) VALUES ('001-jobs');
    INSERT INTO job VALUES ('old', 'Old job', 'text', 3, '2026-01-01', '2026-01-02', '2026-01-03');`);
  await db.destroy();
  return folder;
}

describe('price books in the store', () => {
  it('come into a store that was made without them, and its jobs use the book that ships', async () => {
    const store = await openStore(await storeOfFirstVersion());
    expect(await readJobRow(store, 'old')).toMatchObject({ name: 'Old job', document: 'text', revision: 3 });
    expect(await bookOfJob(store, 'old')).toBeNull();
    const book = await createPriceBook(store, 'Mine', 'prices', day(1));
    expect(await useBook(store, 'old', book)).toBe(true);
    expect(await saveJob(store, 'old', 3, { name: 'Old job', document: 'more' }, day(2))).toEqual({
      ok: true,
      revision: 4,
    });
    expect(await bookOfJob(store, 'old')).toBe(book);
    await store.destroy();
  });

  it('are saved over the revision that was seen, and over no other', async () => {
    const store = await testStore();
    const id = await createPriceBook(store, 'A', 'one', day(1));
    expect(await savePriceBook(store, id, 1, 'B', 'two', day(2))).toEqual({ ok: true, revision: 2 });
    expect(await savePriceBook(store, id, 1, 'C', 'three', day(3))).toEqual({ ok: false, clash: true });
    expect(await readPriceBookRow(store, id)).toMatchObject({ name: 'B', document: 'two', revision: 2 });
    expect(await listPriceBooks(store)).toMatchObject([{ id, name: 'B', revision: 2 }]);
  });

  it('give their jobs back to the book that ships when they go to the bin', async () => {
    const store = await testStore();
    const [job, other] = [await createJob(store, 'J', '', day(1)), await createJob(store, 'K', '', day(1))];
    const [a, b] = [
      await createPriceBook(store, 'A', '', day(1)),
      await createPriceBook(store, 'B', '', day(1)),
    ];
    await useBook(store, job, a);
    await useBook(store, other, b);
    expect(await useBook(store, 'none', a)).toBe(false);
    expect(await putInBin(store, 'price_book', a, day(2))).toBe(true);
    expect(await bookOfJob(store, job)).toBeNull();
    expect(await listJobBooks(store)).toEqual([
      { id: job, name: 'J', price_book: null },
      { id: other, name: 'K', price_book: b },
    ]);
    await useBook(store, other, null);
    expect(await bookOfJob(store, other)).toBeNull();
  });
});
