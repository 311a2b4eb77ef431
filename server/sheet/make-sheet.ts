import type { Job, PriceIndex, UnitSystem } from '../../engine/index.ts';
import type { Paper, Sheet } from '../../views/sheet.ts';
import { isRefusal, type Refusal, refuse } from '../answers/refusal.ts';
import { reportOf } from '../answers/report-of.ts';
import { jobHash } from '../document/job-hash.ts';
import { sheetOf } from './sheet-of.ts';

/** As many runs as one sheet prints: some hundred pages of them. */
const mostRuns = 3000;

/** How a reader wants the sheet; what is left out is the job's own. */
export interface SheetChoice {
  readonly scheme?: string | undefined;
  readonly units?: UnitSystem | undefined;
  /** US Letter for US units, A4 for SI, where it is left out. */
  readonly paper?: Paper | undefined;
  /** Empty for a sheet without a day on it. */
  readonly date: string;
}

/**
 * The sheet of one scheme of a job, or in sentences why there is none.
 *
 * @param place how the job is named in those sentences
 */
export function makeSheet(job: Job, choice: SheetChoice, prices: PriceIndex, place: string): Sheet | Refusal {
  const units = choice.units ?? job.units;
  const report = reportOf({ ...job, units }, choice.scheme, place);
  if (isRefusal(report)) return report;
  const { size } = report.network;
  if (size > mostRuns) return refuse(`${place} has ${size} runs; expected at most ${mostRuns} for a sheet`);
  const paper = choice.paper ?? (units === 'us' ? 'letter' : 'a4');
  return sheetOf(report, prices, { hash: jobHash(job), paper, date: choice.date });
}
