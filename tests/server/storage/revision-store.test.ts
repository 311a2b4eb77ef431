import { describe, expect, it } from 'vitest';
import { deleteForGood, putInBin } from '../../../server/storage/bin-store.ts';
import { createJob, readJobRow, saveJob } from '../../../server/storage/job-store.ts';
import {
  listRevisions,
  mergeBase,
  nameRevision,
  readRevision,
  revisionLine,
} from '../../../server/storage/revision-store.ts';
import {
  advanceTrial,
  dropTrial,
  keepTrial,
  listTrials,
  readTrial,
  startTrial,
} from '../../../server/storage/trial-store.ts';
import { redoJob, turnsOf, undoJob } from '../../../server/storage/undo-store.ts';
import { testStore } from './test-store.ts';

const day = (number: number) => new Date(Date.UTC(2026, 0, number));
const moved = (revision: number) => ({ ok: true, revision });
const clash = { ok: false, clash: true };
const nothing = { ok: false, clash: false };

async function storeWithJob() {
  const db = await testStore();
  const id = await createJob(db, 'A', 'one', day(1));
  const save = (seen: number, document: string, change?: string) =>
    saveJob(db, id, seen, { name: document.toUpperCase(), document, change }, day(2));
  const shown = async () => (await readJobRow(db, id))?.document;
  return { db, id, save, shown };
}

describe('revisions', () => {
  it('are kept one for each save, with what changed', async () => {
    const { db, id, save } = await storeWithJob();
    await save(1, 'two', 'ER made 3/4');
    expect(await listRevisions(db, id)).toEqual([
      {
        number: 2,
        parent: 1,
        job_name: 'TWO',
        saved_at: '2026-01-02T00:00:00.000Z',
        change: 'ER made 3/4',
        name: null,
        author: null,
        trial: null,
      },
      expect.objectContaining({ number: 1, parent: null, job_name: 'A', change: null }),
    ]);
    expect(await readRevision(db, id, 1)).toMatchObject({ document: 'one' });
    expect(await readRevision(db, id, 2)).toMatchObject({ document: 'two' });
    expect(await readRevision(db, id, 3)).toBeUndefined();
  });

  it('take a name and lose it again', async () => {
    const { db, id } = await storeWithJob();
    expect(await nameRevision(db, id, 1, 'sent to the plan office')).toBe(true);
    expect(await readRevision(db, id, 1)).toMatchObject({ name: 'sent to the plan office' });
    await nameRevision(db, id, 1, null);
    expect(await readRevision(db, id, 1)).toMatchObject({ name: null });
    expect(await nameRevision(db, id, 2, 'x')).toBe(false);
  });

  it('go with their job when it is deleted for good', async () => {
    const { db, id } = await storeWithJob();
    await startTrial(db, id, 1, day(1));
    await putInBin(db, 'job', id, day(2));
    expect(await listRevisions(db, id)).toHaveLength(1);
    await deleteForGood(db, 'job', id);
    expect(await db.selectFrom('revision').selectAll().execute()).toEqual([]);
    expect(await db.selectFrom('trial').selectAll().execute()).toEqual([]);
  });
});

describe('undo and redo', () => {
  it('move the head along the line, name and all, and clash with an old page', async () => {
    const { db, id, save, shown } = await storeWithJob();
    await save(1, 'two');
    await save(2, 'three');
    expect(await undoJob(db, id, 3, day(3))).toEqual(moved(2));
    expect(await readJobRow(db, id)).toMatchObject({ name: 'TWO', revision: 2, document: 'two' });
    expect(await undoJob(db, id, 3, day(3))).toEqual(clash);
    expect(await save(3, 'late')).toEqual(clash);
    expect(await undoJob(db, id, 2, day(3))).toEqual(moved(1));
    expect(await undoJob(db, id, 1, day(3))).toEqual(nothing);
    expect(await turnsOf(db, id)).toMatchObject({ undo: undefined, redo: { number: 2 } });
    expect(await redoJob(db, id, 1, day(3))).toEqual(moved(2));
    expect(await turnsOf(db, id)).toMatchObject({ undo: { number: 2 }, redo: { number: 3 } });
    expect(await redoJob(db, id, 2, day(3))).toEqual(moved(3));
    expect(await redoJob(db, id, 3, day(3))).toEqual(nothing);
    expect(await shown()).toBe('three');
    expect(await undoJob(db, 'none', 1, day(3))).toEqual(clash);
  });

  it('start a branch where something is saved after an undo; the other stays in the history', async () => {
    const { db, id, save, shown } = await storeWithJob();
    await save(1, 'two');
    await save(2, 'three');
    await undoJob(db, id, 3, day(3));
    expect(await save(2, 'four')).toEqual(moved(4));
    expect(await redoJob(db, id, 4, day(3))).toEqual(nothing);
    expect(await undoJob(db, id, 4, day(3))).toEqual(moved(2));
    expect(await redoJob(db, id, 2, day(3))).toEqual(moved(4));
    expect(await shown()).toBe('four');
    expect((await listRevisions(db, id)).map(({ number, parent }) => [number, parent])).toEqual([
      [4, 2],
      [3, 2],
      [2, 1],
      [1, null],
    ]);
    expect(await revisionLine(db, id, 4)).toEqual([4, 2, 1]);
    expect(await mergeBase(db, id, 3, 4)).toBe(2);
    expect(await mergeBase(db, id, 1, 4)).toBe(1);
    expect(await mergeBase(db, id, 9, 4)).toBeUndefined();
  });

  it('let a page that saw the shown revision save, whatever the head did in between', async () => {
    const { db, id, save, shown } = await storeWithJob();
    await save(1, 'two');
    await undoJob(db, id, 2, day(3));
    await redoJob(db, id, 1, day(3));
    expect(await save(2, 'three')).toEqual(moved(3));
    expect(await undoJob(db, id, 3, day(3))).toEqual(moved(2));
    expect(await shown()).toBe('two');
  });
});

describe('a trial', () => {
  it('stands beside the job until it is kept, and then is its history', async () => {
    const { db, id, shown } = await storeWithJob();
    const trial = (await startTrial(db, id, 1, day(2))) ?? '';
    const step = (seen: number, document: string) =>
      advanceTrial(db, trial, seen, { name: 'T', document }, day(2));
    expect(await step(1, 'tried')).toEqual(moved(2));
    expect(await step(1, 'late')).toEqual(clash);
    expect(await step(2, 'tried more')).toEqual(moved(3));
    expect(await shown()).toBe('one');
    expect((await listRevisions(db, id)).map(({ number }) => number)).toEqual([1]);
    expect(await readTrial(db, trial)).toMatchObject({ job: id, base: 1, head: 3 });
    expect(await keepTrial(db, trial, day(3))).toEqual(moved(3));
    expect(await readJobRow(db, id)).toMatchObject({ name: 'T', document: 'tried more' });
    expect(await undoJob(db, id, 3, day(3))).toEqual(moved(2));
    expect(await keepTrial(db, trial, day(3))).toEqual(clash);
    expect(await step(3, 'late')).toEqual(clash);
    expect(await listTrials(db, id)).toEqual([]);
  });

  it('is not kept over a job that has moved on, nor redone into', async () => {
    const { db, id, save, shown } = await storeWithJob();
    const trial = (await startTrial(db, id, 1, day(2))) ?? '';
    await advanceTrial(db, trial, 1, { name: 'T', document: 'tried' }, day(2));
    expect(await save(1, 'two')).toEqual(moved(3));
    expect(await keepTrial(db, trial, day(3))).toEqual(clash);
    expect(await shown()).toBe('two');
    expect(await mergeBase(db, id, 2, 3)).toBe(1);
    await undoJob(db, id, 3, day(3));
    expect(await redoJob(db, id, 1, day(3))).toEqual(moved(3));
  });

  it('leaves nothing when it is dropped, and its numbers are not given again', async () => {
    const { db, id, save } = await storeWithJob();
    const trial = (await startTrial(db, id, 1, day(2))) ?? '';
    await advanceTrial(db, trial, 1, { name: 'T', document: 'tried' }, day(2));
    expect(await dropTrial(db, trial)).toBe(true);
    expect(await dropTrial(db, trial)).toBe(false);
    expect(await readRevision(db, id, 2)).toBeUndefined();
    expect(await save(1, 'three')).toEqual(moved(3));
  });

  it("starts from a revision of the job's own history only", async () => {
    const { db, id } = await storeWithJob();
    const trial = (await startTrial(db, id, 1, day(2))) ?? '';
    await advanceTrial(db, trial, 1, { name: 'T', document: 'tried' }, day(2));
    expect(await startTrial(db, id, 2, day(2))).toBeUndefined();
    expect(await startTrial(db, id, 9, day(2))).toBeUndefined();
    expect(await startTrial(db, 'none', 1, day(2))).toBeUndefined();
  });
});
