import type { Generated } from 'kysely';

/** One kept job: which of its revisions it shows, and what is asked of it without reading a document. */
export interface JobRow {
  readonly id: string;
  /** Of the revision that it shows. */
  readonly name: string;
  /** Number of the revision that it shows. */
  readonly revision: number;
  /** The revision that redo leads back to; the shown one or a later one made from it. */
  readonly tip: number;
  /** How many numbers were given to revisions; the highest of them. */
  readonly revisions: number;
  readonly created_at: string;
  readonly updated_at: string;
  readonly opened_at: string;
  /** The price book that it uses; null for the one that ships. */
  readonly price_book: string | null;
  /** When it was put into the bin; null where it is not there. */
  readonly binned_at: string | null;
}

/** One state of a job's document; never changed once it is kept, but for the name that a person gives it. */
export interface RevisionRow {
  readonly job: string;
  /** 1, 2, 3 ... within the job, never given twice. */
  readonly number: number;
  /** The revision that it was made from, always a lower number; null for the first. */
  readonly parent: number | null;
  readonly job_name: string;
  /** See `packed-text.ts`. */
  readonly document: Uint8Array | ArrayBuffer;
  readonly saved_at: string;
  /** What it changed, in words; null where nobody said. */
  readonly change: string | null;
  /** What a person called it. */
  readonly name: string | null;
  readonly author: string | null;
  /** The trial that it is a step of; null once it is part of the job. */
  readonly trial: string | null;
}

/** Changes tried beside a job, which stays as it is until they are kept. */
export interface TrialRow {
  readonly id: string;
  readonly job: string;
  /** The revision from which it started. */
  readonly base: number;
  /** Its last step; the base while there is none. */
  readonly head: number;
  readonly started_at: string;
  readonly author: string | null;
}

/** One kept price book: its document as the file that a person downloads, and how often it was changed. */
export interface PriceBookRow {
  readonly id: string;
  readonly name: string;
  readonly document: string;
  readonly revision: number;
  readonly created_at: string;
  readonly updated_at: string;
  /** When it was put into the bin; null where it is not there. */
  readonly binned_at: string | null;
}

export interface Schema {
  job: JobRow;
  revision: RevisionRow;
  trial: TrialRow;
  price_book: PriceBookRow;
  migration: { name: string; applied_at: Generated<string> };
}
