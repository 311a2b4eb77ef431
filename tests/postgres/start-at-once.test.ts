import { expect, it } from 'vitest';
import { openStore } from '../../server/storage/database.ts';
import { listJobs } from '../../server/storage/job-store.ts';
import { knownChanges } from '../../server/storage/migrate.ts';
import { seedStore } from '../../server/storage/seed-store.ts';
import { testPlace } from '../server/storage/test-store.ts';
import { noon } from '../server/test-app.ts';

it('is migrated and seeded once by three servers that start at the same moment', async () => {
  const place = await testPlace();
  const jobs = [
    { name: 'First', document: '1' },
    { name: 'Second', document: '2' },
  ];
  const stores = await Promise.all(
    [1, 2, 3].map(async () => {
      const store = await openStore(place);
      await seedStore(store, jobs, noon);
      return store;
    }),
  );
  for (const store of stores) {
    expect((await listJobs(store)).map(({ name }) => name)).toEqual(['First', 'Second']);
    const applied = await store.selectFrom('migration').select('name').orderBy('name').execute();
    expect(applied.map(({ name }) => name)).toEqual([...knownChanges].sort());
    await store.destroy();
  }
});
