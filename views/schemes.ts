import type { BrokenScheme, ComparedScheme } from '../engine/compare/compare-schemes.ts';
import type { Job } from '../engine/job/job.ts';
import type { PriceBook } from '../engine/takeoff/price-book.ts';

/** What a layout costs, cents, and the pressure that the street could lose before its worst fixture is short, Pa. */
export interface CostPoint {
  readonly cents: number;
  readonly spare: number;
}

/** What a scheme costs as drawn and at least, for each spare pressure; pipe, fittings and devices. */
export interface SchemeCost {
  /** Undefined where a price is missing, or where no pressure at the street would do. */
  readonly drawn: CostPoint | undefined;
  /** Cost and spare rising; empty where there is none, and then why. */
  readonly curve: readonly CostPoint[];
  readonly why: string;
}

/** One scheme beside the others: the letter that it has in the picture, and its figures. */
export interface SchemeColumn {
  readonly letter: string;
  readonly compared: ComparedScheme;
  readonly cost: SchemeCost;
  /** Prices that the book does not have, in words. */
  readonly missing: readonly string[];
}

/** What the page of schemes side by side shows. */
export interface Comparison {
  readonly id: string;
  readonly revision: number;
  readonly job: Job;
  readonly book: PriceBook;
  readonly columns: readonly SchemeColumn[];
  readonly broken: readonly { readonly scheme: BrokenScheme; readonly sentences: readonly string[] }[];
  /** Ids of the schemes asked for, where the reader chose among many. */
  readonly asked: readonly string[];
  /** A reducing valve stands in one of them. */
  readonly reduced: boolean;
}
