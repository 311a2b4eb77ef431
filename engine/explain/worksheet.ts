import { fromSI, toSI } from '../../tables/units/definitions.ts';
import type { Formula } from './formula.ts';
import type { Explained, Step, Steps } from './step.ts';

/** Steps as they are added, each a formula applied to values that are given, cited, or steps themselves. */
export interface Worksheet {
  readonly steps: Steps;
  /** Applies a formula in the units that its source prints and keeps the step. */
  readonly apply: <S extends string>(
    id: string,
    formula: Formula<S>,
    terms: { readonly [name in S]: Explained },
  ) => Explained;
}

/** An empty worksheet. */
export function worksheet(): Worksheet {
  const steps = new Map<string, Step>();
  return {
    steps,
    apply: (id, typed, terms) => {
      // A formula over the names S is one over strings; the compiler cannot see it while S is open.
      const formula = typed as unknown as Formula;
      const value = computeStep(formula, terms);
      steps.set(id, { id, formula, value, terms });
      return { from: 'step', value, step: id };
    },
  };
}

/** The SI value of a formula over explained terms: each goes in as the source prints it, the result comes back. */
export function computeStep(formula: Formula, terms: Readonly<Record<string, Explained>>): number {
  const printed: Record<string, number> = {};
  for (const [name, { unit }] of Object.entries(formula.symbols)) {
    const term = terms[name];
    if (term === undefined) throw new Error(`${formula.id} lacks ${name}`);
    printed[name] = fromSI(term.value, unit);
  }
  return toSI(formula.compute(printed), formula.result.unit);
}
