import type { UnitSystem } from '../../engine/job/job.ts';
import { fromSI, units } from '../../tables/units/definitions.ts';
import { displayUnits, type Shown, showParts } from '../../tables/units/display.ts';

/** The symbol of the unit in which a reader sees a dimension, and which a bare number typed into its field takes. */
export function unitSymbol(shown: Shown, system: UnitSystem): string {
  return units[displayUnits[system][shown].unit].symbol;
}

/** A number with a true minus sign and without a negative zero. */
export function fixed(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** An SI value rounded for reading, without its unit. */
export function figure(value: number, shown: Shown, system: UnitSystem): string {
  return showParts(value, shown, system).value.replace('-', '−');
}

/** An SI value rounded for reading, with its unit. */
export function figureWithUnit(value: number, shown: Shown, system: UnitSystem): string {
  return `${figure(value, shown, system)} ${unitSymbol(shown, system)}`;
}

/** A pressure difference with its sign always written, so that the sign alone tells short from spare. */
export function signedPressure(value: number, system: UnitSystem): string {
  const text = figureWithUnit(Math.abs(value), 'pressure', system);
  return value < 0 ? `−${text}` : `+${text}`;
}

/** A value and its limit with their unit, in as many decimals as it takes to see that they are not the same. */
export function figuresApart(
  value: number,
  limit: number,
  shown: Shown,
  system: UnitSystem,
): readonly [value: string, limit: string] {
  const { unit, decimals } = displayUnits[system][shown];
  const write = (one: number, digits: number) => `${fixed(fromSI(one, unit), digits)} ${units[unit].symbol}`;
  let digits: number = decimals;
  while (value !== limit && digits < decimals + 3 && write(value, digits) === write(limit, digits)) digits++;
  return [write(value, digits), write(limit, digits)];
}
