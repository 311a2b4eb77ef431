import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { sql } from 'kysely';
import { beforeEach, describe, expect, it } from 'vitest';
import { checkBackup } from '../../../server/backup/check-backup.ts';
import { restoreBackup } from '../../../server/backup/restore-backup.ts';
import { keptTables } from '../../../server/backup/tables.ts';
import { writeBackup } from '../../../server/backup/write-backup.ts';

import { putInBin } from '../../../server/storage/bin-store.ts';
import { openStore, type Store } from '../../../server/storage/database.ts';
import { createJob, readJobRow, saveJob } from '../../../server/storage/job-store.ts';
import { createPriceBook, useBook } from '../../../server/storage/price-book-store.ts';
import { advanceTrial, startTrial } from '../../../server/storage/trial-store.ts';
import { undoJob } from '../../../server/storage/undo-store.ts';
import { run } from '../cli/run.ts';
import { smallDocument } from '../small-job.ts';
import { testStore } from '../storage/test-store.ts';
import { noon } from '../test-app.ts';

const shippedBook = readFileSync(
  new URL('../../../examples/prices/invented-2026.json', import.meta.url),
  'utf8',
);
const draft = (name: string) => ({ name, document: smallDocument });

/** A store with something in every table: saves, one taken back, a trial, a book in use, a job in the bin. */
async function fill(store: Store): Promise<string> {
  const job = await createJob(store, 'Cottage', smallDocument, noon);
  await saveJob(store, job, 1, draft('Cottage, second'), noon);
  await saveJob(store, job, 2, draft('Cottage, third'), noon);
  await undoJob(store, job, 3, noon);
  const trial = await startTrial(store, job, 2, noon);
  await advanceTrial(store, trial!, 2, draft('Cottage, tried'), noon);
  await useBook(store, job, await createPriceBook(store, 'Book', shippedBook, noon));
  await putInBin(store, 'job', await createJob(store, 'Left', smallDocument, noon), noon);
  return job;
}

/** Every row of every table that a backup keeps, bytes as text, without what a driver adds. */
async function rowsOf(store: Store): Promise<unknown> {
  const found: Record<string, unknown> = {};
  for (const { name, key } of keptTables) {
    const order = sql.join(key.map((column) => sql.ref(column)));
    const { rows } = await sql<object>`select * from ${sql.table(name)} order by ${order}`.execute(store);
    found[name] = rows.map((row) =>
      Object.fromEntries(
        Object.entries(row)
          .filter(([column]) => column !== '_metadata')
          .map(([column, value]) => [
            column,
            typeof value === 'object' && value !== null
              ? Buffer.from(value as Uint8Array).toString('hex')
              : value,
          ]),
      ),
    );
  }
  return found;
}

let folder: string;
let file: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hightap-backup-'));
  file = join(folder, 'kept.backup');
});

describe('a backup', () => {
  it('brings every row back, into a store of either kind, in place of what it held', async () => {
    const first = await openStore(':memory:');
    const job = await fill(first);
    const counts = await writeBackup(first, file, noon);
    expect(counts).toEqual({ price_book: 1, job: 2, revision: 5, trial: 1 });
    const second = await testStore();
    const replaced = await createJob(second, 'In the way', smallDocument, noon);
    await restoreBackup(second, file, await checkBackup(file));
    expect(await rowsOf(second)).toEqual(await rowsOf(first));
    expect(await readJobRow(second, replaced)).toBeUndefined();
    expect(await saveJob(second, job, 2, draft('Goes on'), noon)).toEqual({ ok: true, revision: 5 });
    const back = join(folder, 'back.backup');
    await writeBackup(second, back, noon);
    await restoreBackup(first, back, await checkBackup(back));
    expect(await rowsOf(first)).toEqual(await rowsOf(second));
    await first.destroy();
    await second.destroy();
  });
});

describe('a file that is not whole', () => {
  const lines = (text: string) => text.trimEnd().split('\n');
  const spoilt: readonly (readonly [string, (whole: Buffer) => Buffer, RegExp])[] = [
    ['cut short', (whole) => whole.subarray(0, whole.length - 40), /cut short or damaged/],
    ['a byte turned', (whole) => turned(whole), /damaged|check sum|no JSON|no row|cannot be read/],
    ['no gzip', () => Buffer.from('hightap'), /no gzip file/],
    ['another format', () => gzipSync('{"format":"other"}\n'), /no head of a backup/],
    ['its end taken away', (whole) => rewritten(whole, (all) => all.slice(0, -1)), /its end is missing/],
    [
      'a row taken away',
      (whole) => rewritten(whole, (all) => [...all.slice(0, 2), ...all.slice(3)]),
      /check sum/,
    ],
    ['written by a newer program', (whole) => newer(whole), /newer Hightap/],
  ];

  function rewritten(whole: Buffer, change: (all: readonly string[]) => readonly string[]): Buffer {
    return gzipSync(`${change(lines(gunzipSync(whole).toString('utf8'))).join('\n')}\n`);
  }

  function turned(whole: Buffer): Buffer {
    const copy = Buffer.from(whole);
    const middle = copy.length >> 1;
    copy[middle] = copy[middle]! ^ 0xff;
    return copy;
  }

  function newer(whole: Buffer): Buffer {
    return rewritten(whole, ([head, ...others]) => [
      head!.replace('"001-jobs"', '"001-jobs","999-later"'),
      ...others,
    ]);
  }

  it.each(spoilt)('is refused in a sentence and leaves the store as it was: %s', async (_, spoil, words) => {
    const store = await openStore(folder);
    await fill(store);
    const before = await rowsOf(store);
    await writeBackup(store, file, noon);
    await store.destroy();
    writeFileSync(file, spoil(readFileSync(file)));
    const printed = await run(['restore', file, '--replace', '--store', folder]);
    expect(printed.code).toBe(2);
    expect(printed.stderr).toMatch(words);
    expect(printed.stderr.trim().split('\n')).toHaveLength(1);
    const after = await openStore(folder);
    expect(await rowsOf(after)).toEqual(before);
    await after.destroy();
  });

  it('is refused where a document in it is no job', async () => {
    const store = await openStore(folder);
    await createJob(store, 'Odd', JSON.stringify({ format: 'hightap-job', version: 2 }), noon);
    await writeBackup(store, file, noon);
    await store.destroy();
    const printed = await run(['restore', file, '--store', join(folder, 'other')]);
    expect(printed.stderr).toMatch(/the document of Odd, revision 1 cannot be read/);
  });
});

describe('the commands', () => {
  it('write a backup and restore it elsewhere', async () => {
    const store = await openStore(folder);
    await fill(store);
    const before = await rowsOf(store);
    await store.destroy();
    const other = join(folder, 'other');
    expect(await run(['backup', file, '--store', folder])).toMatchObject({
      code: 0,
      stdout: expect.stringContaining('2 jobs in 5 revisions, 1 price book'),
    });
    expect(await run(['restore', file, '--store', other])).toMatchObject({ code: 0 });
    const restored = await openStore(other);
    expect(await rowsOf(restored)).toEqual(before);
    await restored.destroy();
  });

  it('replace a store that holds something only when told to, and no store that a server has open', async () => {
    const store = await openStore(folder);
    await fill(store);
    await run(['backup', file, '--store', folder]);
    expect((await run(['restore', file, '--replace', '--store', folder])).stderr).toMatch(
      /a server has .* open/,
    );
    await store.destroy();
    expect((await run(['restore', file, '--store', folder])).stderr).toMatch(/holds 3 jobs and price books/);
    expect(await run(['restore', file, '--replace', '--store', folder])).toMatchObject({ code: 0 });
  });

  it('say what is not there or in the way', async () => {
    expect((await run(['backup', file, '--store', folder])).stderr).toMatch(/there is no store/);
    expect((await run(['restore', file, '--store', folder])).stderr).toMatch(/there is no file/);
    await (await openStore(folder)).destroy();
    expect((await run(['backup', join(folder, 'no', 'folder'), '--store', folder])).stderr).toMatch(/ENOENT/);
    writeFileSync(file, 'precious');
    expect((await run(['backup', file, '--store', folder])).stderr).toMatch(/is there already/);
    expect(readFileSync(file, 'utf8')).toBe('precious');
  });
});
