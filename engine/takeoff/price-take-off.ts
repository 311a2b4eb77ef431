import type { Decimal } from 'decimal.js';
import { type Article, articleKey } from './article.ts';
import type { PriceIndex } from './index-prices.ts';
import { Exact, nothing, toCents } from './money.ts';
import { articlePrice, isJoint } from './price-article.ts';
import type { TakeOff, TakeOffLine } from './take-off.ts';

/** A line with what it costs. */
export type PricedLine = { readonly line: TakeOffLine } & (
  | {
      readonly price: 'known';
      /** Of one, or of a foot. */
      readonly each: Decimal;
      /** Each times the quantity, exact. */
      readonly money: Decimal;
      /** The same in whole cents, half a cent going up. */
      readonly cents: number;
      readonly hours: number;
    }
  /** Joints are in the price of their fittings. */
  | { readonly price: 'with fittings' }
  | { readonly price: 'missing' }
);

export interface TakeOffPrice {
  /** In the order of the take-off. */
  readonly lines: readonly PricedLine[];
  /** Sum of the lines with a price, each rounded to whole cents. */
  readonly priced: Decimal;
  readonly hours: number;
  /** The same; undefined while a price is missing. */
  readonly total: Decimal | undefined;
  /** Each article once, in the order of the take-off: a missing price is never taken as zero. */
  readonly missing: readonly Article[];
}

/** What a take-off costs by a price book: every line is rounded once to whole cents, half a cent up, then added. */
export function priceTakeOff({ lines }: Pick<TakeOff, 'lines'>, prices: PriceIndex): TakeOffPrice {
  const missing = new Map<string, Article>();
  let cents = nothing;
  let hours = 0;
  const priced = lines.map((line): PricedLine => {
    const { article, quantity } = line;
    if (isJoint(article)) return { line, price: 'with fittings' };
    const each = articlePrice(prices, article);
    if (each === undefined) {
      missing.set(articleKey(article), article);
      return { line, price: 'missing' };
    }
    const money = each.money.times(quantity);
    const own = { money, cents: toCents(money), hours: each.hours * quantity.toNumber() };
    cents = cents.plus(own.cents);
    hours += own.hours;
    return { line, price: 'known', each: each.money, ...own };
  });
  const sum = new Exact(cents).dividedBy(100);
  return {
    lines: priced,
    priced: sum,
    hours,
    total: missing.size > 0 ? undefined : sum,
    missing: [...missing.values()],
  };
}
