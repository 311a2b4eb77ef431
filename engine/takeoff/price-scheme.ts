import type { Decimal } from 'decimal.js';
import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { Scheme } from '../job/job.ts';
import { jointOf } from '../network/pipe-arrays.ts';
import { devicePrice, type PriceIndex } from './index-prices.ts';
import { Exact, nothing, toCents } from './money.ts';
import { itemOfDevice, type MissingPrice, type PriceItem, priceKey } from './price-item.ts';
import { runParts } from './price-run.ts';
import { inOrder } from './take-off-order.ts';

export interface PipeFeet {
  readonly material: MaterialId;
  readonly size: string;
  readonly feet: Decimal;
}

export interface FittingTotal {
  readonly material: MaterialId;
  readonly joint: JointId;
  readonly kind: FittingKind;
  readonly size: string;
  readonly count: number;
}

export interface SchemePrice {
  /** Developed length by material and size, material by material, sizes rising. */
  readonly feet: readonly PipeFeet[];
  /** As drawn, a tee in its two legs; in the order of material, joint and kind, sizes rising. */
  readonly fittings: readonly FittingTotal[];
  /** Exact sums over what the book has a price of. */
  readonly priced: {
    readonly pipe: Decimal;
    readonly fittings: Decimal;
    readonly devices: Decimal;
    readonly hours: number;
  };
  /**
   * What it all costs: each run, and each device, rounded to whole cents with half a cent going up, then added; so it
   * may differ from the exact sums by up to half a cent for each. Undefined while a price is missing.
   */
  readonly total: { readonly money: Decimal; readonly hours: number } | undefined;
  /** Each item once, in the order of the runs. A missing price is never taken as zero. */
  readonly missing: readonly MissingPrice[];
}

/** What a scheme costs in its own sizes: pipe, the fittings drawn, and the devices; fixtures are not in it. */
export function priceScheme(index: PriceIndex, scheme: Pick<Scheme, 'runs'>): SchemePrice {
  const feet = new Map<string, PipeFeet>();
  const fittings = new Map<string, FittingTotal>();
  const missing = new Map<string, MissingPrice>();
  const miss = (item: PriceItem) => missing.set(`${item.item} ${priceKey(item)}`, item);
  let pipeMoney = nothing;
  let fittingMoney = nothing;
  let deviceMoney = nothing;
  let cents = nothing;
  let hours = 0;

  for (const run of scheme.runs) {
    const { material, size, end } = run;
    const joint = jointOf(run);
    const parts = runParts(index, run, size);
    pipeMoney = pipeMoney.plus(parts.pipe);
    fittingMoney = fittingMoney.plus(parts.fittings);
    cents = cents.plus(toCents(parts.pipe.plus(parts.fittings)));
    hours += parts.hours;
    parts.missing.forEach(miss);

    const pipeKey = priceKey({ item: 'pipe', material, size });
    feet.set(pipeKey, { material, size, feet: parts.feet.plus(feet.get(pipeKey)?.feet ?? 0) });
    for (const { kind, count } of run.fittings) {
      const key = priceKey({ item: 'fitting', material, joint, kind, size });
      const before = fittings.get(key)?.count ?? 0;
      fittings.set(key, { material, joint, kind, size, count: before + count });
    }

    if (end === undefined || !('device' in end)) continue;
    const device = devicePrice(index, end);
    if (device === undefined) {
      miss(itemOfDevice(end));
      continue;
    }
    deviceMoney = deviceMoney.plus(device.money);
    cents = cents.plus(toCents(device.money));
    hours += device.hours;
  }

  return {
    feet: [...feet.values()].sort(inOrder),
    fittings: [...fittings.values()].sort(inOrder),
    priced: { pipe: pipeMoney, fittings: fittingMoney, devices: deviceMoney, hours },
    total: missing.size > 0 ? undefined : { money: new Exact(cents).dividedBy(100), hours },
    missing: [...missing.values()],
  };
}
