import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** A client made from the OpenAPI document, compiled and run as programs of their own. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/client/**/*.test.ts'],
    testTimeout: 120_000,
  },
});
