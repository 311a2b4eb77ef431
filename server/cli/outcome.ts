/** What a command came to; nothing is printed before the one place that prints has it. */
export type Outcome =
  | { readonly is: 'text'; readonly code: 0 | 1; readonly lines: readonly string[] }
  | { readonly is: 'json'; readonly code: 0 | 1; readonly value: unknown }
  /** A document as it stands in its file. */
  | { readonly is: 'file'; readonly text: string }
  | Refusal;

/** No answer: sentences that a person can act on. Bad input has exit code 2, which stands where none is given. */
export interface Refusal {
  readonly is: 'refusal';
  readonly code?: 1;
  readonly sentences: readonly string[];
}

export function refuse(...sentences: readonly string[]): Refusal {
  return { is: 'refusal', sentences };
}

/** Whether something that may have been refused was. */
export function isRefusal(value: object): value is Refusal {
  return 'is' in value && value.is === 'refusal';
}
