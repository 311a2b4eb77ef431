import { Decimal } from 'decimal.js';

/**
 * Decimals with room for any price times any length: 11 digits times 13 lose none of the 40 kept. Sums and products
 * of money are exact; only {@link toCents} rounds.
 */
export const Exact = Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP });

export const nothing: Decimal = new Exact(0);

/** Whole cents, half a cent going up. */
export function toCents(money: Decimal): number {
  return money.times(100).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
}
