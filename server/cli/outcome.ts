import type { Refusal } from '../answers/refusal.ts';

export { isRefusal, type Refusal, refuse } from '../answers/refusal.ts';

/** What a command came to; nothing is printed before the one place that prints has it. */
export type Outcome =
  | { readonly is: 'text'; readonly code: 0 | 1; readonly lines: readonly string[] }
  | { readonly is: 'json'; readonly code: 0 | 1; readonly value: unknown }
  /** A document as it stands in its file. */
  | { readonly is: 'file'; readonly text: string }
  /** Bad input has exit code 2, which stands where none is given. */
  | (Refusal & { readonly code?: 1 });
