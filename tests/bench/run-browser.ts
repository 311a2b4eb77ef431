import { benchBrowser } from './browser.bench.ts';

/** `npm run bench:browser` prints the figures that need Chromium; `--short` shows only that they run. */
await benchBrowser(process.argv.includes('--short'));
