import type { Decimal } from 'decimal.js';
import type { Job } from '../engine/job/job.ts';
import type { PriceBook } from '../engine/takeoff/price-book.ts';
import type { ServiceId } from '../tables/takeoff/part-kinds.ts';

/** How a take-off may be set in groups, with the words of the choice. */
export const takeOffGroupings = {
  size: 'by diameter',
  area: 'by area',
  phase: 'by phase',
} as const;
export type TakeOffGrouping = keyof typeof takeOffGroupings;

/** What the estimator adds, as typed; empty for nothing. */
export interface TypedRates {
  readonly laborRate: string;
  readonly tax: string;
  readonly overhead: string;
  readonly margin: string;
}

/** One amount of a price that is built up, whole cents. */
export interface BidLine {
  readonly what: string;
  readonly cents: number;
  readonly sum: boolean;
}

/** How pipe may be bought, with the words of the choice. */
export const pipePlans = {
  whole: 'cut, few couplings',
  coupled: 'cut, off-cuts coupled',
  'allow-5': '5 % for waste, not cut',
  'allow-10': '10 % for waste, not cut',
  'allow-15': '15 % for waste, not cut',
} as const;
export type PipePlan = keyof typeof pipePlans;

/** So much of one article in a group. */
export interface TakeOffRow {
  readonly item: string;
  /** Of one, or of a foot; with a price only. */
  readonly each: number | undefined;
  readonly unit: 'each' | 'ft';
  readonly quantity: Decimal;
  /** Whole cents and hours, or why there are none. */
  readonly price: { readonly cents: number; readonly hours: number } | 'with fittings' | 'missing';
}

/** Rows under one title, with the sum of those that have a price. */
export interface TakeOffGroup {
  readonly title: string;
  readonly rows: readonly TakeOffRow[];
  readonly cents: number;
  readonly hours: number;
  readonly missing: number;
}

/** One article of which there is more in one scheme than in another. */
export interface TakeOffDifference {
  readonly item: string;
  readonly unit: 'each' | 'ft';
  readonly by: number;
  readonly before: number;
  readonly after: number;
}

/** A stick or coil with its cuts; lengths in m. */
export interface TakeOffStick {
  readonly form: 'stick' | 'coil';
  readonly metres: number;
  readonly cuts: readonly {
    readonly run: string;
    readonly metres: number;
    readonly part: number;
    readonly parts: number;
  }[];
  readonly offCut: number;
}

/** What is bought of one pipe, and how it is cut; lengths in m. */
export interface PipeBought {
  readonly counts: readonly {
    readonly count: number;
    readonly form: 'stick' | 'coil';
    readonly metres: number;
  }[];
  readonly sticks: readonly TakeOffStick[];
  readonly bought: number;
  readonly offCuts: number;
  readonly couplings: number;
  /** How much longer it may be than the least there is, as a part of that; 0 where it is the least. */
  readonly gap: number;
}

/** What is bought of one pipe with an allowance for waste; lengths in m. */
export interface PipeAllowed extends Pick<PipeBought, 'counts' | 'bought'> {
  readonly percent: number;
  readonly allowed: number;
}

/** The pipe of one material and size. */
export interface TakeOffPipe {
  readonly name: string;
  readonly pieces: number;
  readonly lengths: readonly { readonly service: ServiceId; readonly metres: number }[];
  /** Or in a sentence why it is not cut. */
  readonly cut: PipeBought | PipeAllowed | string;
}

/** What the page of a take-off shows. */
export interface TakeOffSheet {
  readonly id: string;
  readonly job: Job;
  readonly book: PriceBook;
  readonly scheme: { readonly id: string; readonly name: string };
  readonly grouping: TakeOffGrouping;
  readonly groups: readonly TakeOffGroup[];
  /** Sum of the lines with a price, whole cents, and whether that is all of them. */
  readonly cents: number;
  readonly hours: number;
  readonly complete: boolean;
  /** Articles without a price, in words. */
  readonly missing: readonly string[];
  readonly plan: PipePlan;
  readonly pipes: readonly TakeOffPipe[];
  readonly rates: TypedRates;
  /** The price built up; a sentence where the rates make none; undefined where none is asked for, or a price is missing. */
  readonly bid: readonly BidLine[] | string | undefined;
  /** What the drawing leaves open, in sentences. */
  readonly questions: readonly string[];
  /** How it was counted, and the table values that it rests on. */
  readonly rules: readonly string[];
  readonly values: readonly string[];
  /** Against another scheme, where the reader asked for one. */
  readonly against:
    | {
        readonly id: string;
        readonly name: string;
        readonly added: readonly TakeOffDifference[];
        readonly dropped: readonly TakeOffDifference[];
        /** How much more this scheme costs than that one, cents; undefined where a price is missing. */
        readonly more: number | undefined;
      }
    | undefined;
}
