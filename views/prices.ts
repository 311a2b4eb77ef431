import type { PriceBook } from '../engine/takeoff/price-book.ts';
import type { PriceFigures, PriceList } from '../engine/takeoff/price-line.ts';
import type { Refused } from './workbench.ts';

/** One price as a row: what it is for, and its figures as text. */
export interface PriceRow {
  /** Its place in its list. */
  readonly at: number;
  readonly name: string;
  readonly unit: 'ft' | 'each';
  readonly figures: PriceFigures;
}

/** The head of a book with what its pages need to address it. */
export interface BookHead {
  readonly id: string;
  readonly revision: number;
  /** False for the book that ships, which is read-only. */
  readonly kept: boolean;
  readonly book: PriceBook;
}

/** The prices of one list of a book that a filter leaves, a page of them. */
export interface BookView extends BookHead {
  readonly list: PriceList;
  readonly counts: Readonly<Record<PriceList, number>>;
  readonly text: string;
  readonly rows: readonly PriceRow[];
  /** How many the filter leaves. */
  readonly found: number;
  readonly page: number;
  readonly pages: number;
  /** A row that was refused, by its place. */
  readonly refusedRow?: { readonly at: number; readonly refused: Refused } | undefined;
  readonly refusedAbout?: Refused | undefined;
  /** Heading and meaning of each column of the table that is imported and exported. */
  readonly columns: Readonly<Record<string, string>>;
}

/** A book in the list. */
export interface BookSummary {
  readonly id: string;
  readonly name: string;
  readonly kept: boolean;
  readonly about: string;
}

/** What an uploaded file would do to a book. */
export interface PreviewView extends BookHead {
  readonly token: string;
  readonly added: readonly { readonly name: string; readonly unit: string; readonly figures: PriceFigures }[];
  readonly changed: readonly {
    readonly name: string;
    readonly unit: string;
    readonly before: PriceFigures;
    readonly after: PriceFigures;
  }[];
  readonly bad: readonly { readonly line: number; readonly why: string }[];
  readonly unchanged: number;
  readonly untouched: number;
  readonly passedOver: readonly string[];
}

export const priceLists: Readonly<Record<PriceList, string>> = {
  pipe: 'Pipe',
  fittings: 'Fittings',
  devices: 'Devices',
  parts: 'Other parts',
};
