import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Files opened by Debian's LibreOffice Calc: apt-get install --no-install-recommends libreoffice-calc. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/office/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
    fileParallelism: false,
  },
});
