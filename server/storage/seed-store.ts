import type { Store } from './database.ts';
import { createJob, listJobs } from './job-store.ts';

/** Fills an empty store with jobs; the first is the one that opens. */
export async function seedStore(
  store: Store,
  jobs: readonly { readonly name: string; readonly document: string }[],
  now: Date,
): Promise<void> {
  if ((await listJobs(store)).length > 0) return;
  let openedAt = now.getTime();
  for (const { name, document } of jobs) {
    await createJob(store, name, document, now, new Date(openedAt));
    openedAt -= 1000;
  }
}
