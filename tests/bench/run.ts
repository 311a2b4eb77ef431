import { benchEdit } from './edit.bench.ts';
import { benchExactDemand } from './exact-demand.bench.ts';
import { figure } from './figure.ts';
import { benchPacking } from './packing.bench.ts';
import { benchPrices } from './prices.bench.ts';
import { benchSizing } from './sizing.bench.ts';
import { benchSolve } from './solve.bench.ts';
import { benchTakeOff } from './takeoff.bench.ts';

/** `npm run bench` prints every figure; `--short` shows only that they run. */
const short = process.argv.includes('--short');
await benchEdit(short);
benchSolve(short);
await benchSizing(short);
benchPacking(short);
benchTakeOff(short);
benchExactDemand(short);
await benchPrices(short);
figure('peak_memory_mb', process.resourceUsage().maxRSS / 1024, 'MB');
