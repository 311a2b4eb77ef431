import type { Job } from '../../engine/job/job.ts';
import type { Migration } from './migrate.ts';
import { migrate } from './migrate.ts';
import { type Opened, openDocument, openObject } from './open-document.ts';

export type ReadJob =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly string[] };

export interface ReadOptions {
  /** In place of the product's own, for tests of the mechanism. */
  readonly migrations?: readonly Migration[];
}

/**
 * Reads a job file: UTF-8 JSON of at most 20 MB, checked against the format, quantities and run lines read. Whether
 * the runs make a tree is asked when the network is built.
 *
 * @returns the job, or what is wrong with the file: one sentence each, at most 20 and a count of the others
 */
export async function readJob(file: string | Uint8Array, options: ReadOptions = {}): Promise<ReadJob> {
  return await readOpened(openDocument(file, 'hightap-job', 'job'), options);
}

/** Reads a job out of JSON that was parsed already and went through `parseFile`, as part of a larger document. */
export async function readJobObject(value: unknown): Promise<ReadJob> {
  return await readOpened(openObject(value, 'hightap-job', 'job'), {});
}

async function readOpened(opened: Opened, options: ReadOptions): Promise<ReadJob> {
  if (!opened.ok) return opened;
  // Loaded when the first job is read: a server that starts has no need of the parser of quantities yet.
  const [{ jobReader, jobVersion }, { tellIssues }] = await Promise.all([
    import('./schema.ts'),
    import('./tell-issues.ts'),
  ]);
  const migrated = migrate(opened.raw, jobVersion, options.migrations);
  if (!migrated.ok) return { ok: false, problems: [migrated.problem] };

  const read = jobReader.safeParse(migrated.job);
  if (read.success) return { ok: true, job: read.data };
  return { ok: false, problems: tellIssues(read.error.issues, migrated.job, 'job') };
}
