import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Sizing against an independent optimiser, which takes minutes. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/optimiser/**/*.test.ts'],
    testTimeout: 180_000,
  },
});
