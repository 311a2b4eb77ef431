import type { Decimal } from 'decimal.js';
import { bid, parseRates } from '../../engine/takeoff/bid.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import type { BidLine, TypedRates } from '../../views/take-off.ts';

/**
 * The price built up from material and hours by the rates that are typed, line by line; a sentence where they make
 * none; undefined where nothing is typed.
 */
export function bidLines(
  material: Decimal,
  hours: number,
  typed: TypedRates,
): BidLine[] | string | undefined {
  if (Object.values(typed).every((text) => text.trim() === '')) return undefined;
  const parsed = parseRates(typed);
  if (!parsed.ok) return parsed.problem;
  const { rates } = parsed;
  const made = bid(material, hours, rates);
  const line = (what: string, amount: Decimal, sum = false): BidLine => ({
    what,
    cents: toCents(amount),
    sum,
  });
  return [
    line('Material', made.material),
    line(`Sales tax on material, ${rates.tax} %`, made.tax),
    line(`Labor, ${hours.toFixed(2)} h at ${rates.laborRate}`, made.labor),
    line('Direct cost', made.direct, true),
    line(`Overhead, ${rates.overhead} %`, made.overhead),
    line('Cost', made.cost, true),
    line(`Margin, ${rates.margin} % of the price`, made.margin),
    line('Price', made.price, true),
  ];
}
