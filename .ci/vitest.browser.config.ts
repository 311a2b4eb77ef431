import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Journeys in Debian's Chromium; `.ci/run` installs it. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    fileParallelism: false,
  },
});
