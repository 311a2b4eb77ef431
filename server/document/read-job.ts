import type { Job } from '../../engine/job/job.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { decodeText } from './decode-text.ts';
import { fileLimits } from './file-limits.ts';
import type { Migration, RawJob } from './migrate.ts';
import { migrate } from './migrate.ts';
import { scanJson } from './scan-json.ts';

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
  const decoded = decodeText(file);
  if (!decoded.ok) return { ok: false, problems: [decoded.problem] };
  const faults = scanJson(decoded.text);
  if (faults.length > 0) return { ok: false, problems: faults };

  const raw: unknown = JSON.parse(decoded.text);
  if (!isRawJob(raw)) return { ok: false, problems: ['the file holds no object in braces; expected a job'] };
  const { format } = raw;
  if (format !== 'hightap-job') {
    const came =
      format === undefined
        ? 'format is missing'
        : `format: ${shorten(typeof format === 'string' ? format : JSON.stringify(format))} came`;
    return { ok: false, problems: [`${came}; expected "hightap-job", the mark of a job file`] };
  }
  // Loaded when the first job is read: a server that starts has no need of the parser of quantities yet.
  const [{ jobReader, jobVersion }, { tellIssue }] = await Promise.all([
    import('./schema.ts'),
    import('./tell-issue.ts'),
  ]);
  const migrated = migrate(raw, jobVersion, options.migrations);
  if (!migrated.ok) return { ok: false, problems: [migrated.problem] };

  const read = jobReader.safeParse(migrated.job);
  if (read.success) return { ok: true, job: read.data };
  const problems = read.error.issues.flatMap((issue) => tellIssue(issue, migrated.job).split('\n'));
  const { problemsTold, problemsSought } = fileLimits;
  const over = problems.length - problemsTold;
  if (over <= 0) return { ok: false, problems };
  const more = problems.length >= problemsSought ? `and at least ${over} more` : `and ${over} more`;
  return { ok: false, problems: [...problems.slice(0, problemsTold), more] };
}

function isRawJob(value: unknown): value is RawJob {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
