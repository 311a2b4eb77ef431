/** No answer: sentences that a person can act on. */
export interface Refusal {
  readonly is: 'refusal';
  readonly sentences: readonly string[];
}

export function refuse(...sentences: readonly string[]): Refusal {
  return { is: 'refusal', sentences };
}

/** Whether something that may have been refused was. */
export function isRefusal(value: object): value is Refusal {
  return 'is' in value && value.is === 'refusal';
}
