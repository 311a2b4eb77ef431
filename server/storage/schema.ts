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
}

export interface Schema {
  job: JobRow;
  migration: { name: string; applied_at: Generated<string> };
}
