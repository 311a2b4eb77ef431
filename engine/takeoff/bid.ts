import type { Decimal } from 'decimal.js';
import { Exact, nothing } from './money.ts';

/** What an estimator adds to material; percents as typed, e.g. `7.25`. */
export interface BidRates {
  /** Money for an hour of labor. */
  readonly laborRate: Decimal;
  /** Sales tax on material, percent. */
  readonly tax: Decimal;
  /** Overhead on material, tax and labor, percent. */
  readonly overhead: Decimal;
  /** Margin as a part of the price, percent, under 100: not of the cost, which is a markup. */
  readonly margin: Decimal;
}

/** A price built up from its parts; every amount in whole cents, half a cent going up. */
export interface Bid {
  readonly material: Decimal;
  readonly tax: Decimal;
  readonly labor: Decimal;
  /** Material, tax and labor. */
  readonly direct: Decimal;
  readonly overhead: Decimal;
  readonly cost: Decimal;
  readonly margin: Decimal;
  readonly price: Decimal;
}

/**
 * Builds a price up in the order in which an estimator does: material, sales tax on it, labor, overhead on these, and
 * a margin that is so much of the price. Each amount is rounded once, then added, so the column adds up as printed.
 * The order is common practice, no source; what is taxed and how is the law's of the place.
 *
 * @param material in the book's currency
 */
export function bid(material: Decimal, hours: number, rates: BidRates): Bid {
  const tax = cents(percentOf(material, rates.tax));
  const labor = cents(rates.laborRate.times(hours));
  const direct = material.plus(tax).plus(labor);
  const overhead = cents(percentOf(direct, rates.overhead));
  const cost = direct.plus(overhead);
  const price = cents(cost.dividedBy(new Exact(1).minus(rates.margin.dividedBy(100))));
  return { material, tax, labor, direct, overhead, cost, margin: price.minus(cost), price };
}

/** Why rates make no price, naming the first that is off; undefined where they do. */
export function ratesProblem(rates: BidRates): string | undefined {
  const { laborRate, tax, overhead, margin } = rates;
  if (laborRate.lessThan(nothing) || laborRate.greaterThan(10_000)) {
    return `the labor rate is ${laborRate}; expected 0 to 10000 for an hour`;
  }
  for (const [name, value] of [
    ['tax', tax],
    ['overhead', overhead],
  ] as const) {
    if (value.lessThan(nothing) || value.greaterThan(1000)) {
      return `the ${name} is ${value} %; expected 0 to 1000`;
    }
  }
  if (margin.lessThan(nothing) || margin.greaterThan(95))
    return `the margin is ${margin} % of the price; expected 0 to 95`;
  return undefined;
}

/** Rates as they are typed, each a plain decimal or empty for nothing; or a sentence that names what came. */
export function parseRates(
  typed: Readonly<Record<keyof BidRates, string>>,
): { readonly ok: true; readonly rates: BidRates } | { readonly ok: false; readonly problem: string } {
  const words = { laborRate: 'labor rate', tax: 'tax', overhead: 'overhead', margin: 'margin' } as const;
  const read: Partial<Record<keyof BidRates, Decimal>> = {};
  for (const name of Object.keys(words) as (keyof BidRates)[]) {
    const text = typed[name].trim().replace(/\s*%$/, '');
    if (!/^(\d{1,9}(\.\d{1,4})?)?$/.test(text)) {
      return {
        ok: false,
        problem: `the ${words[name]} is "${typed[name].slice(0, 40)}"; expected a number such as 12.5`,
      };
    }
    read[name] = new Exact(text === '' ? 0 : text);
  }
  const rates = read as BidRates;
  const problem = ratesProblem(rates);
  return problem === undefined ? { ok: true, rates } : { ok: false, problem };
}

function percentOf(amount: Decimal, percent: Decimal): Decimal {
  return amount.times(percent).dividedBy(100);
}

function cents(amount: Decimal): Decimal {
  return amount.toDecimalPlaces(2, Exact.ROUND_HALF_UP);
}
