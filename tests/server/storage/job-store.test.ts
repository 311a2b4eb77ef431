import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { putInBin } from '../../../server/storage/bin-store.ts';
import { openStore } from '../../../server/storage/database.ts';
import {
  createJob,
  lastOpenedJob,
  listJobs,
  markOpened,
  readJobRow,
  saveJob,
} from '../../../server/storage/job-store.ts';
import { seedStore } from '../../../server/storage/seed-store.ts';
import { testStore } from './test-store.ts';

const day = (number: number) => new Date(Date.UTC(2026, 0, number));

describe('the store', () => {
  it('keeps a job over a restart, and migrates once', async () => {
    const folder = join(mkdtempSync(join(tmpdir(), 'store-')), 'data');
    const first = await openStore(folder);
    const id = await createJob(first, 'A', 'text', day(1));
    await first.destroy();
    const second = await openStore(folder);
    expect(await readJobRow(second, id)).toMatchObject({ name: 'A', document: 'text', revision: 1 });
    expect(await second.selectFrom('migration').select('name').execute()).toEqual([
      { name: '001-jobs' },
      { name: '002-price-books' },
      { name: '003-revisions' },
      { name: '004-bin' },
    ]);
    await second.destroy();
  });

  it('is not opened by a program older than itself', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'store-'));
    const store = await openStore(folder);
    await store.insertInto('migration').values({ name: '999-later' }).execute();
    await store.destroy();
    await expect(openStore(folder)).rejects.toThrow('newer Hightap');
  });

  it('saves over the revision that was seen, and over no other', async () => {
    const store = await testStore();
    const id = await createJob(store, 'A', 'one', day(1));
    expect(await saveJob(store, id, 1, { name: 'B', document: 'two' }, day(2))).toEqual({
      ok: true,
      revision: 2,
    });
    expect(await saveJob(store, id, 1, { name: 'C', document: 'three' }, day(3))).toEqual({
      ok: false,
      clash: true,
    });
    expect(await readJobRow(store, id)).toMatchObject({ name: 'B', document: 'two', revision: 2 });
    expect(await saveJob(store, 'none', 1, { name: 'C', document: 'three' }, day(3))).toEqual({
      ok: false,
      clash: true,
    });
  });

  it('lists the last opened first, and none that is in the bin', async () => {
    const store = await testStore();
    const a = await createJob(store, 'A', 'a', day(1));
    const b = await createJob(store, 'B', 'b', day(2));
    expect(await lastOpenedJob(store)).toBe(b);
    await markOpened(store, a, day(3));
    expect((await listJobs(store)).map((job) => job.name)).toEqual(['A', 'B']);
    expect(await putInBin(store, 'job', a, day(4))).toBe(true);
    expect(await putInBin(store, 'job', a, day(4))).toBe(false);
    expect(await lastOpenedJob(store)).toBe(b);
  });

  it('is seeded when it is empty only, the first job on top', async () => {
    const store = await testStore();
    const jobs = [
      { name: 'First', document: '1' },
      { name: 'Second', document: '2' },
    ];
    await seedStore(store, jobs, day(1));
    await seedStore(store, jobs, day(2));
    expect((await listJobs(store)).map((job) => job.name)).toEqual(['First', 'Second']);
  });
});
