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
  return value < 0
    ? `−${figuresApart(-value, 0, 'pressure', system)[0]}`
    : `+${figureWithUnit(value, 'pressure', system)}`;
}

/** How many decimals it takes to see that a value and its limit are not the same, and by how much. */
export function decimalsApart(value: number, limit: number, shown: Shown, system: UnitSystem): number {
  const { unit, decimals } = displayUnits[system][shown];
  const one = fromSI(value, unit);
  const other = fromSI(limit, unit);
  const seen = (digits: number): boolean =>
    one.toFixed(digits) !== other.toFixed(digits) && Number((one - other).toFixed(digits)) !== 0;
  let digits = decimals;
  while (value !== limit && digits < decimals + 3 && !seen(digits)) digits++;
  return digits;
}

/** A value and its limit with their unit, in as many decimals as it takes to see that they are not the same. */
export function figuresApart(
  value: number,
  limit: number,
  shown: Shown,
  system: UnitSystem,
): readonly [value: string, limit: string] {
  const { unit } = displayUnits[system][shown];
  const digits = decimalsApart(value, limit, shown, system);
  const write = (one: number) => `${fixed(fromSI(one, unit), digits)} ${units[unit].symbol}`;
  return [write(value), write(limit)];
}
