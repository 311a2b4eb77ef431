import { fromSI, type UnitId, units } from '../../tables/units/definitions.ts';
import type { Step } from './step.ts';

/** A step as it would be written by hand: the formula, the same with numbers, and the result. */
export interface WrittenStep {
  readonly formula: string;
  readonly arithmetic: string;
  readonly result: string;
  /** Each term by its symbol, with its unit. */
  readonly inputs: Readonly<Record<string, string>>;
}

/**
 * Five significant figures, as a reviewer would carry with a hand calculator, and six where these are all there are, so
 * that 9.80665 stays itself; no exponent where it can be helped.
 */
export function figures(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const magnitude = Math.abs(value);
  if (magnitude >= 1e7 || magnitude < 1e-5) return value.toExponential(4);
  const six = Number(value.toPrecision(6));
  return String(Math.abs(six - value) <= 1e-12 * magnitude ? six : Number(value.toPrecision(5)));
}

// A subscript belongs to the name of a symbol, a square or cube does not.
const symbolName = /[\p{L}_](?:(?![²³])[\p{L}\p{N}_])*/gu;

/** The written form of a step, numbers in the units that the formula's source prints. */
export function writeOut({ formula, terms, value }: Step): WrittenStep {
  const numbers: Record<string, number> = {};
  const inputs: Record<string, string> = {};
  for (const [name, { unit }] of Object.entries(formula.symbols)) {
    const term = terms[name];
    if (term === undefined) continue;
    numbers[name] = fromSI(term.value, unit);
    inputs[name] = withUnit(term.value, unit);
  }
  const printed = formula.printedAt?.(numbers) ?? formula.printed;
  // What stands on the left is the result; a law solved for something inside it keeps both sides.
  const right = printed.replace(/^[\p{L}_][\p{L}\p{N}_]* = /u, '');
  const plugged = right.replace(symbolName, (name) => {
    const number = Object.hasOwn(numbers, name) ? numbers[name] : undefined;
    if (number === undefined) return name;
    return number < 0 ? `(${figures(number)})` : figures(number);
  });
  const [left, inside] = right.split(' = ');
  const unknown = inside === undefined ? undefined : left!.match(symbolName)?.[0];
  return {
    formula: printed,
    arithmetic: unknown === undefined ? plugged : `${plugged}; so ${unknown}`,
    result: withUnit(value, formula.result.unit),
    inputs,
  };
}

function withUnit(value: number, unit: UnitId): string {
  return `${figures(fromSI(value, unit))} ${units[unit].symbol}`.trim();
}
