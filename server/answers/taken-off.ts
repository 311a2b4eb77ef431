import {
  differences,
  type PriceIndex,
  priceTakeOff,
  type Report,
  type TakeOff,
  type TakeOffPrice,
  takeOff,
} from '../../engine/index.ts';
import type { Differences } from '../../engine/takeoff/differences.ts';
import { toCents } from '../../engine/takeoff/money.ts';
import type { BidLine, TypedRates } from '../../views/take-off.ts';
import { bidLines } from '../takeoff/bid-lines.ts';
import { type Refusal, refuse } from './refusal.ts';

/** What an answer is held against: an earlier revision of the job, or another scheme. */
export interface Earlier {
  readonly name: string;
  readonly differences: Differences;
  /** Whole cents; undefined where a price is missing in either. */
  readonly more: number | undefined;
}

/** What a scheme takes and costs, with the price built up where rates came, and the earlier revision it is held against. */
export interface TakenOff {
  readonly taken: TakeOff;
  readonly priced: TakeOffPrice;
  readonly built: readonly BidLine[] | undefined;
  readonly earlier: Earlier | undefined;
}

/** Takes a solved scheme off, or says why the rates make no price. */
export function takenOff(
  report: Report,
  prices: PriceIndex,
  rates: TypedRates,
  before?: Report,
): TakenOff | Refusal {
  const taken = takeOff(report.network);
  const priced = priceTakeOff(taken, prices);
  const made = bidLines(priced.priced, priced.hours, rates);
  if (typeof made === 'string') return refuse(made);
  return {
    taken,
    priced,
    built: priced.total === undefined ? undefined : made,
    earlier: before === undefined ? undefined : against(before, taken, priced, prices),
  };
}

/** An earlier report set against a take-off. */
function against(report: Report, taken: TakeOff, priced: TakeOffPrice, prices: PriceIndex): Earlier {
  const before = takeOff(report.network);
  const was = priceTakeOff(before, prices).total;
  const is = priced.total;
  return {
    name: `${report.network.job.name}, ${before.scheme.name}`,
    differences: differences(before, taken),
    more: was === undefined || is === undefined ? undefined : toCents(is.minus(was)),
  };
}
