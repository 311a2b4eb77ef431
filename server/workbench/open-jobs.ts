import { readJob } from '../document/read-job.ts';
import type { Store } from '../storage/database.ts';
import { jobRevision, readJobRow } from '../storage/job-store.ts';
import { computeJob } from './compute-job.ts';
import type { OpenJob } from './workbench.tsx';

export type Opened =
  | { readonly ok: true; readonly open: OpenJob }
  | { readonly ok: false; readonly why: 'missing' }
  | { readonly ok: false; readonly why: 'unreadable'; readonly sentences: readonly string[] };

/** Kept jobs as read and computed; a few stay in memory, so that an edit reads nothing from the store but its revision. */
export interface OpenJobs {
  readonly open: (id: string) => Promise<Opened>;
  readonly keep: (open: OpenJob) => void;
  readonly forget: (id: string) => void;
}

const mostKept = 24;

export function openJobs(store: Store): OpenJobs {
  const kept = new Map<string, OpenJob>();

  function keep(open: OpenJob): void {
    kept.delete(open.id);
    kept.set(open.id, open);
    for (const oldest of kept.keys()) {
      if (kept.size <= mostKept) break;
      kept.delete(oldest);
    }
  }

  async function open(id: string): Promise<Opened> {
    const current = await jobRevision(store, id);
    if (current === undefined) return { ok: false, why: 'missing' };
    const known = kept.get(id);
    if (known !== undefined && known.revision === current.revision) {
      keep(known);
      return { ok: true, open: known };
    }
    const row = await readJobRow(store, id);
    if (row === undefined) return { ok: false, why: 'missing' };
    const read = await readJob(row.document);
    if (!read.ok) return { ok: false, why: 'unreadable', sentences: read.problems };
    const computed = computeJob(read.job);
    if (!computed.ok) return { ok: false, why: 'unreadable', sentences: computed.sentences };
    const opened: OpenJob = { id, revision: row.revision, document: row.document, ...computed.computed };
    keep(opened);
    return { ok: true, open: opened };
  }

  return { open, keep, forget: (id) => kept.delete(id) };
}
