import type { Job, Scheme } from '../engine/job/job.ts';
import type { InletResult, Report } from '../engine/network/report.ts';
import type { HandMethodId } from '../engine/sizing/hand-methods.ts';
import type { PsiPrice } from '../engine/sizing/price-of-psi.ts';
import type { Unsized } from '../engine/sizing/size-scheme.ts';
import type { PriceBook } from '../engine/takeoff/price-book.ts';
import type { MaterialId } from '../tables/pipe/names.ts';
import type { Refused } from './workbench.ts';

/** What a sizing may decide, as a reader asks for it. */
export interface SizingQuestion {
  /** Runs that stay as they are drawn. */
  readonly keep: readonly string[];
  /** Runs that keep one size among them. */
  readonly trunks: readonly (readonly string[])[];
  readonly notLarger: boolean;
  /** None: each run's own. */
  readonly materials: readonly MaterialId[];
}

/** A sizing of the whole scheme: what its pipe and fittings cost, and what it leaves at the worst fixture. */
export interface MethodResult {
  readonly method: 'drawn' | 'least-cost' | HandMethodId;
  /** Undefined where a price is missing. */
  readonly cost: { readonly cents: number; readonly hours: number } | undefined;
  readonly worst: InletResult | undefined;
  readonly errors: number;
  /** Runs larger and smaller than at least cost; undefined where nothing fits. */
  readonly against: { readonly larger: number; readonly smaller: number } | undefined;
}

/** One run that the least-cost sizing makes of another pipe. */
export interface ChangedRun {
  readonly id: string;
  readonly before: string;
  readonly after: string;
  /** Cents that it costs more; undefined where the pipe drawn has no price. */
  readonly more: number | undefined;
}

/** Least cost of pipe and fittings, cents, at a pressure at the street, Pa. */
export interface CurvePoint {
  readonly cents: number;
  readonly need: number;
}

/** What was found, or why there is nothing: the words are made by the page. */
export interface SizingFound {
  readonly available: number;
  /** In the order in which they are shown; only what is drawn where no run has a choice. */
  readonly methods: readonly MethodResult[];
  readonly least: { readonly scheme: Scheme; readonly changed: readonly ChangedRun[] } | undefined;
  readonly unsized: Unsized | undefined;
  /** Prices that stood in the way, in words. */
  readonly missing: readonly string[];
  /** The need falls as the cost rises. */
  readonly curve: readonly CurvePoint[];
  readonly psi: readonly PsiPrice[];
}

/** What the page of least-cost sizing shows. */
export interface SizingView {
  readonly id: string;
  readonly revision: number;
  readonly job: Job;
  readonly scheme: Scheme;
  readonly report: Report;
  readonly book: PriceBook;
  readonly question: SizingQuestion;
  readonly refused?: Refused | undefined;
  /** Undefined where the question was refused. */
  readonly found: SizingFound | undefined;
}
