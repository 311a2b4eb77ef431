import { fromSI, units } from '../../tables/units/definitions.ts';
import type { Step } from './step.ts';

/** A step as it would be written by hand: the formula, the same with numbers, and the result. */
export interface WrittenStep {
  readonly formula: string;
  readonly arithmetic: string;
  readonly result: string;
}

/** Five significant figures, as a reviewer would carry with a hand calculator; no exponent where it can be helped. */
export function figures(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const magnitude = Math.abs(value);
  if (magnitude >= 1e7 || magnitude < 1e-5) return value.toExponential(4);
  return String(Number(value.toPrecision(5)));
}

/** The written form of a step, numbers in the units that the formula's source prints. */
export function writeOut({ formula, terms, value }: Step): WrittenStep {
  // What stands on the left is the result; a law solved for something inside it keeps both sides.
  const right = formula.printed.replace(/^[\p{L}_][\p{L}\p{N}_]* = /u, '');
  // A subscript belongs to the name of a symbol, a square or cube does not.
  const arithmetic = right.replace(/[\p{L}_](?:(?![²³])[\p{L}\p{N}_])*/gu, (name) => {
    const symbol = formula.symbols[name];
    const term = terms[name];
    if (symbol === undefined || term === undefined) return name;
    const number = fromSI(term.value, symbol.unit);
    return number < 0 ? `(${figures(number)})` : figures(number);
  });
  const { unit } = formula.result;
  const result = `${figures(fromSI(value, unit))} ${units[unit].symbol}`.trim();
  return { formula: formula.printed, arithmetic, result };
}
