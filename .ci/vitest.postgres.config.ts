import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The store's tests on PostgreSQL, and what only it can do: apt-get install --no-install-recommends postgresql. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: [
      'tests/postgres/**/*.test.ts',
      'tests/server/storage/**/*.test.ts',
      'tests/server/backup/**/*.test.ts',
      'tests/server/routes/{jobs,bin}.test.ts',
      'tests/server/routes/price*.test.ts',
    ],
    globalSetup: 'tests/postgres/set-up.ts',
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
