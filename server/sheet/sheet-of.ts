import { explainAll, type PriceIndex, priceTakeOff, type Report, takeOff } from '../../engine/index.ts';
import type { Paper, Sheet } from '../../views/sheet.ts';
import { hashMark } from '../document/job-hash.ts';
import { cautionSection } from './sections/caution-section.ts';
import { findingSection } from './sections/finding-section.ts';
import { fixtureSection } from './sections/fixture-section.ts';
import { formulaSection } from './sections/formula-section.ts';
import { inletSection } from './sections/inlet-section.ts';
import { jobSection } from './sections/job-section.ts';
import { pathSection } from './sections/path-section.ts';
import { runSection } from './sections/run-section.ts';
import { supplySection } from './sections/supply-section.ts';
import { tableSection } from './sections/table-section.ts';
import { takeOffSection } from './sections/take-off-section.ts';

/** What a sheet says beside what was computed. */
export interface SheetHead {
  /** Of the job's file. */
  readonly hash: string;
  readonly paper: Paper;
  /** The day on it, `2026-11-25`; empty for none. */
  readonly date: string;
}

/** The whole calculation of one scheme as a document, in the units of the report's job. */
export function sheetOf(report: Report, prices: PriceIndex, { hash, paper, date }: SheetHead): Sheet {
  const { job, scheme } = report.network;
  const steps = explainAll(report);
  const taken = takeOff(report.network);
  const priced = priceTakeOff(taken, prices);
  return {
    title: job.name,
    subtitle: `Water supply calculation · layout ${scheme.name}`,
    system: job.units,
    paper,
    hash,
    mark: hashMark(hash),
    date,
    sections: [
      jobSection(report, hash),
      supplySection(report),
      fixtureSection(report),
      inletSection(report),
      pathSection(report),
      findingSection(report),
      runSection(report),
      takeOffSection(job, taken, priced, prices.book),
      formulaSection(report, steps),
      tableSection(steps),
      cautionSection(),
    ],
  };
}
