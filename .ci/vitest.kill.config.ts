import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Servers killed in the midst of saves; KILL_ROUNDS and KILL_STORES (sqlite postgres) choose a shorter run. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/kill/**/*.test.ts'],
    testTimeout: 3_600_000,
    fileParallelism: false,
  },
});
