import type { JobChange } from '../engine/compare/job-changes.ts';
import type { Fixture, InletSide, Job, Run } from '../engine/job/job.ts';
import type { LedgerLine, Report } from '../engine/network/report.ts';

/** A run as a row of the layout: its place in the tree, and its parts in the words of the shorthand. */
export interface RunRow {
  readonly run: Run;
  readonly position: number;
  /** Runs between it and the street. */
  readonly depth: number;
  readonly line: string;
  readonly fittings: string;
  readonly end: string;
}

/** The path that the staircase shows. */
export interface ShownPath {
  readonly fixture: Fixture;
  readonly side: InletSide;
  readonly residual: number;
  readonly required: number;
  readonly margin: number;
  readonly run: number;
  readonly lines: readonly LedgerLine[];
}

/** What the page of one job shows: the document, what was computed from it, and where the reader is. */
export interface Workbench {
  readonly id: string;
  readonly job: Job;
  readonly report: Report;
  readonly rows: readonly RunRow[];
  /** `undefined` where the scheme serves no fixture. */
  readonly path: ShownPath | undefined;
  /** Left out for a job as it is. */
  readonly beside?: Beside;
}

/** What a page shows beside the job `of` as it is: one of its earlier revisions, or changes that are tried. */
export type Beside =
  | { readonly kind: 'past'; readonly of: string }
  | {
      readonly kind: 'trial';
      readonly of: string;
      /** What the trial started from. */
      readonly base: { readonly job: Job; readonly report: Report };
      readonly changes: readonly JobChange[];
    };

/** Sentences by field; the empty name stands for the form as a whole. */
export type Problems = Readonly<Record<string, string>>;

/** A form that was refused: what was typed, and why it does not do. */
export interface Refused {
  readonly values: Readonly<Record<string, string>>;
  readonly problems: Problems;
}

/**
 * Stands in every form for the fields that say where the reader is (revision, chosen path). They are filled in when
 * a whole page leaves, so that the same markup serves for finding out what an edit changed.
 */
export const hereMark = '<!--here-->';

/** The key of a path in addresses and selects. */
export function pathKey(fixture: string, side: InletSide): string {
  return `${fixture}.${side}`;
}
