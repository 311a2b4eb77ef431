import { meterLosses } from '../../tables/devices/meters.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { deviceCurve } from '../hydraulics/device-curve.ts';
import { largerSizes } from '../hydraulics/rising-sizes.ts';
import type { Inlet } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import { pressureAlong } from '../network/pressure-along.ts';
import type { Report } from '../network/report.ts';
import { devicePrice, type PriceIndex } from '../takeoff/index-prices.ts';
import { toCents } from '../takeoff/money.ts';
import { priceRun } from '../takeoff/price-run.ts';
import { pipeOptions } from './pipe-options.ts';

/** One change on the way to an inlet: what it gains there (Pa) and what it costs more (cents). */
export interface PsiPrice {
  readonly change:
    | { readonly do: 'larger-pipe'; readonly run: string; readonly from: string; readonly to: string }
    | { readonly do: 'larger-meter'; readonly run: string; readonly from: string; readonly to: string };
  readonly gain: number;
  readonly cents: number;
}

/**
 * The single changes on the way to an inlet, one size up on each run and on the meter, the most pressure for the
 * money first. A change that gains nothing, or that the book has no price of, is left out.
 */
export function priceOfPsi({ network, solution }: Report, inlet: Inlet, prices: PriceIndex): PsiPrice[] {
  const path = pathTo(network, inlet.run);
  const { options } = pipeOptions(network, solution, { prices, keep: new Set() });
  const found: PsiPrice[] = [];
  const gainOf = (at: number, change: Parameters<typeof pressureAlong>[4]): number =>
    pressureAlong(network, solution, path, at, change) - solution.residual[inlet.run]!;
  for (const at of path) {
    const run = network.runs[at]!;
    const own = priceRun(prices, run, run.size);
    const next = options[at]!.find(({ inches }) => inches > nominalSizes[run.size]!);
    if (own.ok && next !== undefined) {
      const change = { do: 'larger-pipe', run: run.id, from: run.size, to: next.run.size } as const;
      // The options carry pipe and fittings as one loss.
      const gain = gainOf(at, { pipe: next.loss, fittings: 0 });
      found.push({ change, gain, cents: next.cost - own.cents });
    }
    const { end } = run;
    if (end === undefined || !('device' in end) || end.device !== 'meter') continue;
    const [size] = largerSizes(meterLosses, end.size);
    if (size === undefined) continue;
    const before = devicePrice(prices, { device: 'meter', size: end.size });
    const after = devicePrice(prices, { device: 'meter', size });
    if (before === undefined || after === undefined) continue;
    found.push({
      change: { do: 'larger-meter', run: run.id, from: end.size, to: size },
      gain: gainOf(at, { curve: deviceCurve({ device: 'meter', size }, size) }),
      cents: toCents(after.money) - toCents(before.money),
    });
  }
  return found
    .filter(({ gain }) => gain > 0)
    .sort((one, other) => one.cents * other.gain - other.cents * one.gain);
}
