import { type PriceIndex, type Report, type SizingStudy, studySizing } from '../../engine/index.ts';
import { isRefusal, type Refusal } from './refusal.ts';
import { type SizeQuestion, sizeRules } from './size-rules.ts';
import { streetPressures } from './street-pressures.ts';

/** A scheme that serves a fixture at its least cost, and what stands beside that: hand methods, other streets, changes. */
export function studySize(report: Report, question: SizeQuestion, prices: PriceIndex): SizingStudy | Refusal {
  const rules = sizeRules(question, report, prices);
  if (isRefusal(rules)) return rules;
  return studySizing(
    report,
    rules,
    streetPressures(report.solution.supplyPressure, report.network.job.units),
  );
}
