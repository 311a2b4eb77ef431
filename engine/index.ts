/** The engine's public face: a checked job in, figures, findings and explanations out. Pure; SI throughout. */

export type { Finding, FindingCode, Mend, Rule, Severity } from './checks/finding.ts';
export { type RunVelocity, runVelocities } from './checks/run-velocities.ts';
export {
  type BrokenScheme,
  type ComparedScheme,
  compareSchemes,
  mostCompared,
} from './compare/compare-schemes.ts';
export { type JobChange, jobChanges } from './compare/job-changes.ts';
export { type Clash, type Merged, mergeJobs } from './compare/merge-jobs.ts';
export type * from './drawing/placed.ts';
export { drawPlan } from './drawing/plan.ts';
export { drawRiser } from './drawing/riser.ts';
export { explainAll, explainInlet, explainRun } from './explain/explain.ts';
export type { Formula } from './explain/formula.ts';
export type { Explained, Step, Steps } from './explain/step.ts';
export { figures, type WrittenStep, writeOut } from './explain/write-out.ts';
export { type HotWait, hotWaits } from './hotwater/hot-wait.ts';
export { type Deviation, deviations, isChoice } from './job/deviations.ts';
export type * from './job/job.ts';
export { type LaidOut, layOut } from './layout/lay-out.ts';
export type { Missing } from './layout/missing.ts';
export { type LayoutKind, type LayoutOptions, layoutKinds } from './layout/options.ts';
export { type QuickStart, type QuickStartLevel, quickStart } from './layout/quick-start.ts';
export { buildNetwork } from './network/build-network.ts';
export type { Defect, DefectCode } from './network/defect.ts';
export { ledger } from './network/ledger.ts';
export type { Inlet, Network } from './network/network.ts';
export { pathTo } from './network/path.ts';
export { rebuild } from './network/rebuild.ts';
export type { InletResult, LedgerLine, Report } from './network/report.ts';
export type { Solution } from './network/solution.ts';
export { solve } from './network/solve.ts';
export { type SupplyCurve, type SupplyPoint, supplyCurve } from './network/supply-curve.ts';
export { report } from './report.ts';
export { type HandMethodId, handMethods } from './sizing/hand-methods.ts';
export type { CostCurve } from './sizing/least-cost.ts';
export { type PipeOption, pipeOptions } from './sizing/pipe-options.ts';
export { priceOfPressure } from './sizing/price-of-pressure.ts';
export { type PsiPrice, priceOfPsi } from './sizing/price-of-psi.ts';
export {
  type Sized,
  type SizingResult,
  type SizingRules,
  sizedScheme,
  sizeScheme,
  type Unsized,
} from './sizing/size-scheme.ts';
export {
  type SizingStudy,
  type StudiedMethod,
  type StudiedSizes,
  studySizing,
} from './sizing/study-sizing.ts';
export { type Differences, differences } from './takeoff/differences.ts';
export { indexPrices, type PriceIndex } from './takeoff/index-prices.ts';
export type { PriceBook } from './takeoff/price-book.ts';
export { priceScheme, type SchemePrice } from './takeoff/price-scheme.ts';
export { type PricedLine, priceTakeOff, type TakeOffPrice } from './takeoff/price-take-off.ts';
export type { Question } from './takeoff/question.ts';
export type { TakeOff, TakeOffLine, TakeOffOptions } from './takeoff/take-off.ts';
export { takeOff } from './takeoff/take-off-network.ts';
