import type { Decimal } from 'decimal.js';
import type { UnitSystem } from '../../engine/index.ts';
import { fromSI, units } from '../../tables/units/definitions.ts';

type Unit = 'each' | 'ft' | 'm';

/** The metres in a foot, exact. */
const { factor: metres } = units.ft;

/** The unit in which a reader counts or measures what a take-off has. */
export function unitIn(unit: 'each' | 'ft', system: UnitSystem): Unit {
  return unit === 'ft' && system === 'si' ? 'm' : unit;
}

/** A count as it is; a length of so many feet in the reader's unit. */
export function quantityIn(quantity: Decimal, unit: 'each' | 'ft', system: UnitSystem): Decimal {
  return unitIn(unit, system) === 'm' ? quantity.times(metres) : quantity;
}

/** A count, or a length to a tenth with its unit. */
export function quantityWords(quantity: Decimal, unit: 'each' | 'ft', system: UnitSystem): string {
  if (unit === 'each') return `${quantity}`;
  return `${quantityIn(quantity, unit, system).toDecimalPlaces(1)} ${unitIn(unit, system)}`;
}

/** The price of one, or of a foot in the reader's unit, to the hundredth of a cent. */
export function eachIn(each: Decimal, unit: 'each' | 'ft', system: UnitSystem): Decimal {
  return unitIn(unit, system) === 'm' ? each.dividedBy(metres).toDecimalPlaces(4) : each;
}

/** A length in m as a plain number in the reader's unit, to the thousandth. */
export function lengthIn(length: number, system: UnitSystem): number {
  return Math.round(fromSI(length, system === 'si' ? 'm' : 'ft') * 1000) / 1000;
}
