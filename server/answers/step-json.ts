import { type Explained, type Step, writeOut } from '../../engine/index.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { citedJson, placeJson } from './finding-json.ts';
import type { StepAnswer, TermAnswer } from './schema-explain.ts';

/** A step for programs: its value in SI and in the unit its source prints, its terms with where they come from. */
export function stepJson(step: Step): StepAnswer {
  const { id, formula, value, terms } = step;
  const { source, at, verified } = formula.source;
  const written = writeOut(step);
  return {
    id,
    title: formula.title,
    formula: written.formula,
    arithmetic: written.arithmetic,
    result: written.result,
    value_SI: value,
    unit: formula.result.unit,
    value_in_unit: fromSI(value, formula.result.unit),
    source: placeJson(source, at, verified),
    terms: Object.entries(terms).map(([symbol, term]) => termJson(symbol, term, step)),
  };
}

function termJson(symbol: string, term: Explained, { formula }: Step): TermAnswer {
  const declared = formula.symbols[symbol];
  const known = {
    symbol,
    ...(declared === undefined
      ? {}
      : { meaning: declared.meaning, unit: declared.unit, value_in_unit: fromSI(term.value, declared.unit) }),
    value_SI: term.value,
  };
  switch (term.from) {
    case 'given':
      return { ...known, from: term.from, field: term.field, typed: term.typed };
    case 'table':
      return { ...known, from: term.from, table: citedJson(term.cite) };
    case 'step':
      return { ...known, from: term.from, step: term.step };
  }
}
