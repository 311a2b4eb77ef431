import type { Store } from './database.ts';
import { holdStore } from './hold-store.ts';
import { inTransaction } from './in-transaction.ts';
import { createJob } from './job-store.ts';

/** Fills an empty store with jobs, all or none; the first is the one that opens. Of several servers one does it. */
export async function seedStore(
  store: Store,
  jobs: readonly { readonly name: string; readonly document: string }[],
  now: Date,
): Promise<void> {
  await inTransaction(store, async (change) => {
    await holdStore(change);
    if ((await change.selectFrom('job').select('id').limit(1).executeTakeFirst()) !== undefined) return;
    let openedAt = now.getTime();
    for (const { name, document } of jobs) {
      await createJob(change, name, document, now, new Date(openedAt));
      openedAt -= 1000;
    }
  });
}
