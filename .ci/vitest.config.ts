import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The suite that needs nothing but Node; the browser and the long comparison have configurations of their own. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: [
      'tests/browser/**',
      'tests/client/**',
      'tests/office/**',
      'tests/optimiser/**',
      'tests/postgres/**',
      'tests/kill/**',
    ],
    testTimeout: 30_000,
  },
});
