import { describe, expect, it } from 'vitest';
import {
  clearBin,
  deleteForGood,
  listBin,
  putInBin,
  takeFromBin,
} from '../../../server/storage/bin-store.ts';
import { createJob, listJobs, readJobRow, saveJob } from '../../../server/storage/job-store.ts';
import {
  bookOfJob,
  createPriceBook,
  savePriceBook,
  useBook,
} from '../../../server/storage/price-book-store.ts';
import { listRevisions } from '../../../server/storage/revision-store.ts';
import { undoJob } from '../../../server/storage/undo-store.ts';
import { testStore } from './test-store.ts';

const day = (number: number) => new Date(Date.UTC(2026, 0, number));
const clash = { ok: false, clash: true };

describe('the bin', () => {
  it('keeps a job whole and out of reach until it is restored', async () => {
    const store = await testStore();
    const id = await createJob(store, 'A', 'one', day(1));
    await saveJob(store, id, 1, { name: 'B', document: 'two' }, day(1));
    expect(await putInBin(store, 'job', id, day(2))).toBe(true);
    expect(await listJobs(store)).toEqual([]);
    expect(await readJobRow(store, id)).toBeUndefined();
    expect(await saveJob(store, id, 2, { name: 'C', document: 'three' }, day(2))).toEqual(clash);
    expect(await undoJob(store, id, 2, day(2))).toEqual(clash);
    expect(await listBin(store)).toEqual([
      { kind: 'job', id, name: 'B', binned_at: '2026-01-02T00:00:00.000Z' },
    ]);
    expect(await takeFromBin(store, 'job', id)).toBe(true);
    expect(await takeFromBin(store, 'job', id)).toBe(false);
    expect(await readJobRow(store, id)).toMatchObject({ document: 'two', revision: 2 });
    expect(await listRevisions(store, id)).toHaveLength(2);
    expect(await deleteForGood(store, 'job', id)).toBe(false);
  });

  it('gives a restored price book back to the jobs that used it', async () => {
    const store = await testStore();
    const job = await createJob(store, 'A', 'one', day(1));
    const book = await createPriceBook(store, 'Mine', 'prices', day(1));
    await useBook(store, job, book);
    await putInBin(store, 'price_book', book, day(2));
    expect(await bookOfJob(store, job)).toBeNull();
    expect(await savePriceBook(store, book, 1, 'Mine', 'more', day(2))).toEqual(clash);
    await takeFromBin(store, 'price_book', book);
    expect(await bookOfJob(store, job)).toBe(book);
    await putInBin(store, 'price_book', book, day(2));
    expect(await deleteForGood(store, 'price_book', book)).toBe(true);
    expect(await readJobRow(store, job)).toMatchObject({ price_book: null });
  });

  it('is cleared of what has been in it for thirty days, and of nothing else', async () => {
    const store = await testStore();
    const [old, late, kept] = [
      await createJob(store, 'Old', 'one', day(1)),
      await createJob(store, 'Late', 'one', day(1)),
      await createJob(store, 'Kept', 'one', day(1)),
    ];
    await putInBin(store, 'job', old, day(1));
    await putInBin(store, 'job', late, day(2));
    expect(await clearBin(store, day(30))).toBe(0);
    expect(await clearBin(store, day(31))).toBe(1);
    expect((await listBin(store)).map(({ id }) => id)).toEqual([late]);
    expect(await readJobRow(store, kept)).toBeDefined();
  });
});
