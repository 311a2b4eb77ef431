import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { expect, it } from 'vitest';
import { openStore } from '../../../server/storage/database.ts';
import { listJobs, readJobRow, saveJob } from '../../../server/storage/job-store.ts';
import { bookOfJob, readPriceBookRow } from '../../../server/storage/price-book-store.ts';
import { listRevisions, readRevision } from '../../../server/storage/revision-store.ts';
import { undoJob } from '../../../server/storage/undo-store.ts';

/** The file's tables as the program before revisions made them, with two jobs and a price book. */
const older = `
  CREATE TABLE migration (name text primary key, applied_at text not null default CURRENT_TIMESTAMP);
  CREATE TABLE job (id text primary key, name text not null, document text not null,
    revision integer not null check (revision >= 1), created_at text not null, updated_at text not null,
    opened_at text not null, price_book text);
  CREATE INDEX job_opened_at ON job (opened_at);
  CREATE TABLE price_book (id text primary key, name text not null, document text not null,
    revision integer not null check (revision >= 1), created_at text not null, updated_at text not null);
  INSERT INTO migration (name) VALUES ('001-jobs'), ('002-price-books');
  INSERT INTO price_book VALUES ('b1', 'Prices', '{"prices":"ä"}', 4, '2026-01-01', '2026-01-04');
  INSERT INTO job VALUES
    ('first', 'First', '{"document":"five saves, ü 水"}', 5, '2026-01-01', '2026-01-05', '2026-01-06', 'b1'),
    ('second', 'Second', '{"document":"new"}', 1, '2026-01-02', '2026-01-02', '2026-01-07', NULL);`;

it('opens a store that was made before revisions with nothing lost, and saves go on in it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'store-'));
  const database = new Database(join(folder, 'hightap.sqlite'));
  database.exec(older);
  database.close();
  const store = await openStore(folder);
  expect((await listJobs(store)).map(({ id, name, revision }) => [id, name, revision])).toEqual([
    ['second', 'Second', 1],
    ['first', 'First', 5],
  ]);
  expect(await readJobRow(store, 'first')).toMatchObject({
    document: '{"document":"five saves, ü 水"}',
    created_at: '2026-01-01',
    updated_at: '2026-01-05',
    opened_at: '2026-01-06',
    binned_at: null,
  });
  expect(await bookOfJob(store, 'first')).toBe('b1');
  expect(await readPriceBookRow(store, 'b1')).toMatchObject({ document: '{"prices":"ä"}', revision: 4 });
  const at = new Date('2026-02-01T00:00:00Z');
  expect(await saveJob(store, 'first', 5, { name: 'First', document: 'six' }, at)).toEqual({
    ok: true,
    revision: 6,
  });
  expect((await listRevisions(store, 'first')).map(({ number, parent }) => [number, parent])).toEqual([
    [6, 5],
    [5, null],
  ]);
  expect(await undoJob(store, 'first', 6, at)).toEqual({ ok: true, revision: 5 });
  expect((await readRevision(store, 'first', 6))?.document).toBe('six');
  await store.destroy();
  const again = await openStore(folder);
  expect(await readJobRow(again, 'first')).toMatchObject({ revision: 5, tip: 6 });
  await again.destroy();
});
