import type { Defect } from '../network/defect.ts';

/** What a job does not say and a layout has to know; facts only. */
export type Missing =
  /** Service entry, mechanical room and risers. */
  | { readonly code: 'places' }
  | { readonly code: 'fixtures' }
  /** A fixture on no level of the job. */
  | { readonly code: 'fixture-level'; readonly fixture: string }
  /** A fixture with neither a position on the plan nor a length of pipe. */
  | { readonly code: 'fixture-place'; readonly fixture: string }
  /** A place on no level of the job. */
  | { readonly code: 'place-level'; readonly place: 'serviceEntry' | 'mechanicalRoom' }
  /** One fixture, or what cannot be told apart, is nothing to make two halves of. */
  | { readonly code: 'halves' }
  /** The job itself makes no network, whatever its layout. */
  | { readonly code: 'sound-job'; readonly defects: readonly Defect[] };
