import {
  type Explained,
  figures,
  type Step,
  type UnitSystem,
  type WrittenStep,
  writeOut,
} from '../../engine/index.ts';
import { fromSI, type UnitId, units } from '../../tables/units/definitions.ts';
import { asRead } from '../../views/text/as-read.ts';
import { citedText, provenanceText } from '../../views/text/citation-text.ts';
import { citedPlace, citedValue } from '../words/cited-words.ts';
import { wrap } from './wrap.ts';

/** One step as it would be written by hand: title, formula, inputs and where they come from, arithmetic, result. */
export function stepLines(step: Step, system: UnitSystem): string[] {
  const { id, formula, terms } = step;
  const { source, at, verified } = formula.source;
  const written = writeOut(step);
  const { result } = written;
  const read = asRead(step.value, formula.result.unit, system);
  const reading = isReading(step, written);
  return [
    ...wrap(`[${id}] ${formula.title}: ${read === undefined ? result : `${read} (${result})`}`, '', '    '),
    ...(reading ? [] : wrap(written.formula, '    ')),
    ...Object.entries(terms).flatMap(([name, term]) => termLines(name, term, step, written)),
    ...(reading ? [] : arithmeticLines(written)),
    ...(verified === 'computed' ? [] : wrap(provenanceText(source, at, verified), '    Formula: ')),
    ...(formula.note === undefined ? [] : wrap(formula.note, '    Note: ')),
  ];
}

/** One value taken as it is: nothing is left to write out. */
function isReading({ terms }: Step, { formula }: WrittenStep): boolean {
  return formula === '0' || Object.hasOwn(terms, formula);
}

function arithmeticLines({ arithmetic, result }: WrittenStep): string[] {
  // A law that is solved for something inside it says on its own what equals what.
  const first = arithmetic.includes(' = ') ? '    ' : '    = ';
  return wrap(`${arithmetic} = ${result}`, first, '      ');
}

function termLines(name: string, term: Explained, { formula }: Step, { inputs }: WrittenStep): string[] {
  const symbol = formula.symbols[name];
  const value = inputs[name];
  if (symbol === undefined || value === undefined) return [];
  return wrap(`${value}, ${symbol.meaning}; ${originWords(term, value)}`, `      ${name} = `, '          ');
}

/** Where a term comes from: a field somebody typed, a table (as printed, where that differs from what is shown), or a step. */
function originWords(term: Explained, shown: string): string {
  switch (term.from) {
    case 'given':
      return term.typed === '' ? term.field : `${term.field}: ${term.typed}`;
    case 'table': {
      const { cite } = term;
      const printed = inUnit(cite.value, cite.unit) === shown ? citedPlace(cite) : citedValue(cite);
      return `${printed}; ${citedText(cite)}`;
    }
    case 'step':
      return `step ${term.step}`;
  }
}

function inUnit(value: number, unit: UnitId): string {
  return `${figures(fromSI(value, unit))} ${units[unit].symbol}`.trim();
}
