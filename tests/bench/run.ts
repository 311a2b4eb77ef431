import { benchSizing } from './sizing.bench.ts';
import { benchSolve } from './solve.bench.ts';

/** `npm run bench` prints every figure; `--short` shows only that they run. */
const short = process.argv.includes('--short');
benchSolve(short);
await benchSizing(short);
