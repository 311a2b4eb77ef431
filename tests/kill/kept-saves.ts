import { expect } from 'vitest';
import { readJob } from '../../server/document/read-job.ts';
import type { Store } from '../../server/storage/database.ts';
import { readJobRow } from '../../server/storage/job-store.ts';
import { listRevisions, readRevision } from '../../server/storage/revision-store.ts';
import { computeJob } from '../../server/workbench/compute-job.ts';

/** What is known of one job's revisions: the notes of those that were looked at. */
export interface KnownJob {
  readonly id: string;
  readonly notes: Set<string>;
  looked: number;
}

/**
 * Looks at every revision of a job that was not looked at before: it must read and compute. The job must show one of
 * them, and no number may be missing.
 */
export async function lookAt(store: Store, job: KnownJob): Promise<void> {
  // Of one moment: PostgreSQL may still be committing what the server asked for before it was killed.
  const snapshot = store.transaction().setIsolationLevel('repeatable read');
  await snapshot.execute(async (moment) => await lookAtMoment(moment, job));
}

async function lookAtMoment(store: Store, job: KnownJob): Promise<void> {
  const row = await readJobRow(store, job.id);
  const numbers = (await listRevisions(store, job.id)).map(({ number }) => number);
  expect(row?.revision).toBe(numbers[0]);
  expect(row?.revisions).toBe(numbers[0]);
  expect(numbers).toEqual(Array.from(numbers, (_, at) => numbers.length - at));
  for (const number of numbers.filter((one) => one > job.looked)) {
    const revision = await readRevision(store, job.id, number);
    const read = await readJob(revision?.document ?? '');
    if (!read.ok) throw new Error(`revision ${number} does not read: ${read.problems.join('; ')}`);
    expect(computeJob(read.job)).toMatchObject({ ok: true });
    if (read.job.note !== undefined) job.notes.add(read.job.note);
  }
  job.looked = numbers[0] ?? 0;
}
