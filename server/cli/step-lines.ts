import { type Explained, figures, type Step, type UnitSystem, writeOut } from '../../engine/index.ts';
import { type Dimension, fromSI, type UnitId, units } from '../../tables/units/definitions.ts';
import { displayUnits, type Shown, show } from '../../tables/units/display.ts';
import { citedText, placeText, verificationText } from '../../views/text/citation-text.ts';
import { citedPlace, citedValue } from './unverified-lines.ts';
import { wrap } from './wrap.ts';

/** One step as it would be written by hand: title, formula, inputs and where they come from, arithmetic, result. */
export function stepLines(step: Step, system: UnitSystem): string[] {
  const { id, formula, terms } = step;
  const { source, at, verified } = formula.source;
  const { arithmetic, result } = writeOut(step);
  return [
    ...wrap(`[${id}] ${formula.title}: ${result}${asRead(step, system)}`, '', '    '),
    ...(isReading(step) ? [] : wrap(formula.printed, '    ')),
    ...Object.entries(terms).flatMap(([name, term]) => termLines(name, term, step)),
    ...(isReading(step) ? [] : arithmeticLines(arithmetic, result)),
    ...(verified === 'computed'
      ? []
      : wrap(`${placeText(source, at)} (${verificationText(verified)})`, '    Formula: ')),
    ...(formula.note === undefined ? [] : wrap(formula.note, '    Note: ')),
  ];
}

/** The result once more as the reader sees it elsewhere, where its formula works in another unit. */
function asRead({ formula, value }: Step, system: UnitSystem): string {
  const { dimension } = units[formula.result.unit];
  if (!isShown(dimension) || displayUnits[system][dimension].unit === formula.result.unit) return '';
  return ` (${show(value, dimension, system)})`;
}

function isShown(dimension: Dimension): dimension is Extract<Dimension, Shown> {
  return Object.hasOwn(displayUnits.us, dimension);
}

/** One value taken as it is: nothing is left to write out. */
function isReading({ formula, terms }: Step): boolean {
  return formula.printed === '0' || Object.hasOwn(terms, formula.printed);
}

function arithmeticLines(arithmetic: string, result: string): string[] {
  // A law that is solved for something inside it says on its own what equals what.
  if (arithmetic.includes(' = ')) return [...wrap(`${arithmetic};`, '    '), ...wrap(result, '    = ')];
  return wrap(`${arithmetic} = ${result}`, '    = ', '      ');
}

function termLines(name: string, term: Explained, { formula }: Step): string[] {
  const symbol = formula.symbols[name];
  if (symbol === undefined) return [];
  const value = inUnit(term.value, symbol.unit);
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
