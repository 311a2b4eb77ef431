import { jobChanges } from '../../engine/index.ts';
import { addressBeside, readAddress } from '../../views/job-address.ts';
import type { Beside } from '../../views/workbench.ts';
import { readJob } from '../document/read-job.ts';
import type { Store } from '../storage/database.ts';
import { jobRevision } from '../storage/job-store.ts';
import { readRevision, readSummary } from '../storage/revision-store.ts';
import { readTrial } from '../storage/trial-store.ts';
import { type ComputedJob, computeJob } from './compute-job.ts';
import type { OpenJob } from './workbench.tsx';

export type Opened =
  | { readonly ok: true; readonly open: OpenJob }
  | { readonly ok: false; readonly why: 'missing' }
  | { readonly ok: false; readonly why: 'unreadable'; readonly sentences: readonly string[] };

/**
 * Jobs, revisions and trials by their address, read and computed. A few stay in memory, so that an edit reads nothing
 * from the store but its job's revision, and undo no more than that.
 */
export interface OpenJobs {
  readonly open: (id: string) => Promise<Opened>;
  /** An open job as it was at one of its revisions; undefined where there is none of that number. */
  readonly at: (open: OpenJob, revision: number) => Promise<OpenJob | undefined>;
  /** Keeps what an edit made of an open job, under its new revision. */
  readonly follow: (before: OpenJob, revision: number, document: string, computed: ComputedJob) => OpenJob;
  /** Forgets a job with its revisions and trials. */
  readonly forget: (job: string) => void;
}

const mostKept = 48;

export function openJobs(store: Store): OpenJobs {
  const kept = new Map<string, OpenJob>();

  function keep(open: OpenJob): OpenJob {
    const key = keyOf(open.id, open.revision);
    kept.delete(key);
    kept.set(key, open);
    for (const oldest of kept.keys()) {
      if (kept.size <= mostKept) break;
      kept.delete(oldest);
    }
    return open;
  }

  async function open(id: string): Promise<Opened> {
    const address = readAddress(id);
    const { job } = address;
    const current = await jobRevision(store, job);
    if (current === undefined) return missing;
    if (address.at === 'job') return await openAt(id, current.revision);
    if (address.at === 'revision') {
      // A step of a trial is no revision of the job while the trial goes on, and none where it was dropped.
      const summary = await readSummary(store, job, address.revision);
      if (summary?.trial !== null) return missing;
      return await openAt(id, address.revision, { kind: 'past', of: job });
    }
    const trial = await readTrial(store, address.trial);
    if (trial?.job !== job) return missing;
    const base = await open(addressBeside(job, trial.base));
    return base.ok
      ? await openAt(id, trial.head, { kind: 'trial', of: job, base: base.open, changes: [] })
      : base;
  }

  async function openAt(id: string, revision: number, beside?: Beside): Promise<Opened> {
    const known = kept.get(keyOf(id, revision));
    if (known !== undefined) return { ok: true, open: keep(known) };
    const read = await readAt(readAddress(id).job, revision);
    if (!read.ok) return read;
    return { ok: true, open: keep(openJob(id, revision, read.document, read.computed, beside)) };
  }

  async function readAt(job: string, revision: number): Promise<Read> {
    // A revision's number stands for one document for ever, whatever its address.
    const known = kept.get(keyOf(job, revision)) ?? kept.get(keyOf(addressBeside(job, revision), revision));
    if (known !== undefined) return { ok: true, document: known.document, computed: known };
    const row = await readRevision(store, job, revision);
    if (row === undefined) return missing;
    const read = await readJob(row.document);
    if (!read.ok) return { ok: false, why: 'unreadable', sentences: read.problems };
    const computed = computeJob(read.job);
    if (!computed.ok) return { ok: false, why: 'unreadable', sentences: computed.sentences };
    return { ok: true, document: row.document, computed: computed.computed };
  }

  return {
    open,
    at: async ({ id, beside }, revision) => {
      if (!Number.isSafeInteger(revision)) return undefined;
      const opened = await openAt(id, revision, beside);
      return opened.ok ? opened.open : undefined;
    },
    follow: ({ id, beside }, revision, document, computed) =>
      keep(openJob(id, revision, document, computed, beside)),
    forget: (job) => {
      for (const [key, { id }] of kept) if (readAddress(id).job === job) kept.delete(key);
    },
  };
}

type Read =
  | { readonly ok: true; readonly document: string; readonly computed: ComputedJob }
  | Exclude<Opened, { ok: true }>;

const missing = { ok: false, why: 'missing' } as const;

function keyOf(id: string, revision: number): string {
  return `${id}@${revision}`;
}

function openJob(
  id: string,
  revision: number,
  document: string,
  { job, report, rows }: ComputedJob,
  beside: Beside | undefined,
): OpenJob {
  const open = { id, revision, document, job, report, rows };
  if (beside === undefined) return open;
  if (beside.kind === 'past') return { ...open, beside };
  return { ...open, beside: { ...beside, changes: jobChanges(beside.base.job, job) } };
}
