import type { UnitSystem } from '../engine/job/job.ts';

export const papers = { letter: 'US Letter', a4: 'A4' } as const;
export type Paper = keyof typeof papers;

/**
 * The whole calculation as plain data: what a page shows and what a PDF prints. Every figure in it is text already, in
 * the reader's units, so that both say the same.
 */
export interface Sheet {
  readonly title: string;
  readonly subtitle: string;
  readonly system: UnitSystem;
  readonly paper: Paper;
  /** SHA-256 of the job file in hexadecimal, and the part of it that each page carries. */
  readonly hash: string;
  readonly mark: string;
  /** The day it was printed; empty where nobody gave one. */
  readonly date: string;
  readonly sections: readonly SheetSection[];
}

export interface SheetSection {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly SheetBlock[];
  /** On one page of paper. */
  readonly whole?: true;
}

export type SheetBlock =
  | SheetParagraph
  | { readonly is: 'list'; readonly items: readonly string[] }
  /** What is given, each with its name. */
  | { readonly is: 'facts'; readonly rows: readonly (readonly [name: string, value: string])[] }
  | SheetTable
  | SheetFormula
  /** Lines to write on. */
  | { readonly is: 'blanks'; readonly labels: readonly string[] };

export interface SheetParagraph {
  readonly is: 'paragraph';
  readonly text: string;
  /** `answer` is what a reader looks for first, `caution` what must not be overlooked, `note` may be small. */
  readonly tone: 'plain' | 'answer' | 'caution' | 'note';
}

export interface SheetColumn {
  readonly head: string;
  /** Figures stand to the right. */
  readonly align: 'left' | 'right';
}

export interface SheetRow {
  /** As many as the table has columns; a group's title is its first cell. */
  readonly cells: readonly string[];
  readonly kind: 'plain' | 'total' | 'group';
}

export interface SheetTable {
  readonly is: 'table';
  readonly title: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  readonly note: string;
}

/** One formula with the numbers of one run in it. */
export interface SheetFormula {
  readonly is: 'formula';
  readonly title: string;
  readonly step: string;
  readonly printed: string;
  readonly arithmetic: string;
  readonly result: string;
  readonly terms: readonly SheetTerm[];
  readonly source: string;
}

export interface SheetTerm {
  readonly symbol: string;
  readonly value: string;
  readonly meaning: string;
  readonly origin: string;
}
