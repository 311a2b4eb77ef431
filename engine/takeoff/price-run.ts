import type { Decimal } from 'decimal.js';
import { fromSI } from '../../tables/units/definitions.ts';
import type { Quantity, Run } from '../job/job.ts';
import { jointOf } from '../network/pipe-arrays.ts';
import { type PriceIndex, unitPrice } from './index-prices.ts';
import { Exact, nothing, toCents } from './money.ts';
import type { MissingPrice } from './price-item.ts';

export type PricedRun = Pick<Run, 'material' | 'joint' | 'length' | 'fittings'>;

/** The parts of a run's price: exact, of what the book has a price of. */
export interface RunParts {
  readonly feet: Decimal;
  readonly pipe: Decimal;
  readonly fittings: Decimal;
  readonly hours: number;
  readonly missing: readonly MissingPrice[];
}

export type RunPrice =
  | {
      readonly ok: true;
      /** Exact, in the book's currency. */
      readonly price: Decimal;
      /** The price rounded once, half a cent going up. */
      readonly cents: number;
      readonly hours: number;
    }
  | { readonly ok: false; readonly missing: readonly MissingPrice[] };

/**
 * A length as decimal feet, to the nearest thousandth of a millionth: that takes away what the way through metres
 * put on, so that `12.5 ft` is 12.5 again and half a cent is seen as half a cent.
 */
export function feetOf(length: Quantity): Decimal {
  return new Exact(Math.round(fromSI(length.si, 'ft') * 1e9) / 1e9);
}

/** The run as if it were of `size`: its pipe by developed length, and the fittings drawn in it. */
export function runParts(index: PriceIndex, run: PricedRun, size: string): RunParts {
  const { material } = run;
  const joint = jointOf(run);
  const missing: MissingPrice[] = [];
  const feet = feetOf(run.length);
  let pipe = nothing;
  let fittings = nothing;
  let hours = 0;

  const pipeItem = { item: 'pipe', material, size } as const;
  const perFoot = unitPrice(index, pipeItem);
  if (perFoot === undefined) missing.push(pipeItem);
  else {
    pipe = perFoot.money.times(feet);
    hours += perFoot.hours * feet.toNumber();
  }
  for (const { kind, count } of run.fittings) {
    const item = { item: 'fitting', material, joint, kind, size } as const;
    const each = unitPrice(index, item);
    if (each === undefined) {
      missing.push(item);
      continue;
    }
    fittings = fittings.plus(each.money.times(count));
    hours += each.hours * count;
  }
  return { feet, pipe, fittings, hours, missing };
}

/**
 * What a run costs in a size: pipe by the foot of developed length and the fittings drawn in it, each in that size
 * and in the run's own material and joint; the device at its end is not in it. A basis that allows for fittings in
 * percent changes the pressure, not the price.
 *
 * The total is rounded once, to whole cents with half a cent going up; nothing before it is rounded. `hours` is
 * plain labour time, a sum of floating-point numbers.
 *
 * @returns the price, or every item that the book has no price of
 */
export function priceRun(index: PriceIndex, run: PricedRun, size: string): RunPrice {
  const { pipe, fittings, hours, missing } = runParts(index, run, size);
  if (missing.length > 0) return { ok: false, missing };
  const price = pipe.plus(fittings);
  return { ok: true, price, cents: toCents(price), hours };
}
