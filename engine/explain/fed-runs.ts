import type { Report } from '../network/report.ts';
import { names } from './arithmetic.ts';
import type { Explained } from './step.ts';

/** Terms x1, x2, ... of a formula made to measure. */
export function terms(list: readonly Explained[]): Record<string, Explained> {
  return Object.fromEntries(names(list.length).map((name, index) => [name, list[index]!]));
}

/** A term with what it is. */
export interface NamedTerm {
  readonly meaning: string;
  readonly term: Explained;
}

/** The runs that a run feeds directly, as terms: what each brings to a sum, by the step that holds it. */
export function fedTerms(
  { network }: Report,
  at: number,
  quantity: string,
  values: Float64Array,
): NamedTerm[] {
  const fed: NamedTerm[] = [];
  for (let child = at + 1; child < network.subtreeEnd[at]!; child = network.subtreeEnd[child]!) {
    const { id } = network.runs[child]!;
    fed.push({
      meaning: `run ${id}`,
      term: { from: 'step', value: values[child]!, step: `${id}.${quantity}` },
    });
  }
  return fed;
}
