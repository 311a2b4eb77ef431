import type { Generated } from 'kysely';

/** One kept job: its document as the file that a person downloads, and how often it was changed. */
export interface JobRow {
  readonly id: string;
  readonly name: string;
  readonly document: string;
  readonly revision: number;
  readonly created_at: string;
  readonly updated_at: string;
  readonly opened_at: string;
  /** The price book that it uses; null for the one that ships. */
  readonly price_book: string | null;
}

/** One kept price book: its document as the file that a person downloads, and how often it was changed. */
export interface PriceBookRow {
  readonly id: string;
  readonly name: string;
  readonly document: string;
  readonly revision: number;
  readonly created_at: string;
  readonly updated_at: string;
}

export interface Schema {
  job: JobRow;
  price_book: PriceBookRow;
  migration: { name: string; applied_at: Generated<string> };
}
