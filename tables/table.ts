import type { UnitId } from './units/definitions.ts';

/**
 * How far a value was compared with the document it is attributed to.
 *
 * - `seen`: read in the code, standard, law or maker's print itself
 * - `seen-secondary`: read in a page that quotes the document
 * - `textbook`: standard hydraulics as any textbook prints it; the first paper was not read
 * - `corroborated`: recalled, and the same figure was read in another code's table
 * - `memory`: recalled, not found in print; shown as "from memory, not verified"
 * - `computed`: derived here from other values; the note says how
 * - `common-practice`: a rule of the trade with no document behind it
 * - `given`: the job itself states it
 */
export type Verification =
  | 'seen'
  | 'seen-secondary'
  | 'textbook'
  | 'corroborated'
  | 'memory'
  | 'computed'
  | 'common-practice'
  | 'given';

/** One document. Every `Source` stands once, in tables/sources.ts. */
export interface Source {
  readonly id: string;
  readonly title: string;
  /** Empty where there is none: a rule of the trade, a law of a textbook. */
  readonly edition: string;
  readonly note?: string;
}

/** Where in the document, and the day somebody last compared the two. */
export interface Locator {
  readonly table?: string;
  readonly section?: string;
  readonly page?: string;
  readonly checkedOn: string;
}

interface Header {
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  readonly at: Locator;
  /** Holds for every row that does not say otherwise. */
  readonly verified: Verification;
  readonly note?: string;
}

/** What holds for one cell where it is another than its table's. */
export interface CellStory {
  readonly source?: Source;
  readonly at?: Locator;
  readonly verified?: Verification;
}

export interface GridRow<C extends string = string> {
  readonly values: { readonly [column in C]?: number };
  /** Before what the row and the table say. */
  readonly cells?: { readonly [column in C]?: CellStory };
  readonly verified?: Verification;
  readonly note?: string;
}

/** A printed table with named rows and columns; values stand as printed, each column with its unit. */
export interface GridTable<R extends string = string, C extends string = string> extends Header {
  readonly kind: 'grid';
  readonly columns: { readonly [column in C]: UnitId };
  readonly rows: { readonly [row in R]: GridRow<C> };
}

/** A printed list of points, x rising; `rowVerified` overrides by index. */
export interface CurveTable extends Header {
  readonly kind: 'curve';
  readonly x: UnitId;
  readonly y: UnitId;
  readonly points: readonly (readonly [number, number])[];
  readonly rowVerified?: { readonly [index: number]: Verification };
}

/** One published figure that stands in no table: a limit in a section of a code, a definition. */
export interface ValueTable extends Header {
  readonly kind: 'value';
  readonly unit: UnitId;
  readonly printed: number;
}

export type Table = GridTable | CurveTable | ValueTable;

/** One table value with its whole story: as printed, in SI, and where it stands. */
export interface Cited {
  readonly value: number;
  readonly printed: number;
  readonly unit: UnitId;
  readonly table: Table;
  readonly row?: string;
  readonly column?: string;
  /** Where it stands, if not where its table does. */
  readonly source?: Source;
  readonly at?: Locator;
  readonly verified: Verification;
  readonly note?: string;
}
