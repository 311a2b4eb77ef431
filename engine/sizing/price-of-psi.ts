import { meterLosses } from '../../tables/devices/meters.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { deviceCurve } from '../hydraulics/device-curve.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { largerSizes } from '../hydraulics/rising-sizes.ts';
import type { Quantity, Run } from '../job/job.ts';
import { runLoss } from '../network/loss-alone.ts';
import type { Inlet, Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import { pressureAlong } from '../network/pressure-along.ts';
import type { Report } from '../network/report.ts';
import type { Solution } from '../network/solution.ts';
import { devicePrice, type PriceIndex } from '../takeoff/index-prices.ts';
import { toCents } from '../takeoff/money.ts';
import { priceRun } from '../takeoff/price-run.ts';
import { pipeOptions } from './pipe-options.ts';

/** One change on the way to an inlet: what it gains there (Pa) and what it costs more (cents). */
export interface PsiPrice {
  readonly change:
    | { readonly do: 'larger-pipe'; readonly run: string; readonly from: string; readonly to: string }
    | { readonly do: 'larger-meter'; readonly run: string; readonly from: string; readonly to: string }
    /** A shorter way, by so much pipe. */
    | { readonly do: 'shorter-run'; readonly run: string; readonly by: Quantity }
    /** Another scheme of the job as it is drawn; the gain is that of its own worst inlet. */
    | { readonly do: 'other-scheme'; readonly scheme: string; readonly name: string };
  readonly gain: number;
  readonly cents: number;
}

/**
 * The single changes on the way to an inlet: one size up on each run and on the meter, and a shorter way where a foot
 * loses most; the most pressure for the money first. A change that gains nothing, or that the book has no price of, is
 * left out.
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
    const next = options[at]!.find(({ inches }) => inches > nominalInches(run.size));
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
  const shorter = steepest(network, solution, path);
  if (shorter !== undefined) {
    const { at, run, by } = shorter;
    const own = priceRun(prices, network.runs[at]!, run.size);
    const less = priceRun(prices, run, run.size);
    const { pipe, fittings } = runLoss(network, at, run, solution.flow[at]!);
    if (own.ok && less.ok) {
      const change = { do: 'shorter-run', run: run.id, by } as const;
      found.push({ change, gain: gainOf(at, { pipe, fittings }), cents: less.cents - own.cents });
    }
  }
  return byPrice(found);
}

/** Changes that gain something, the most pressure for the money first; what saves money comes before all. */
export function byPrice(changes: readonly PsiPrice[]): PsiPrice[] {
  return changes
    .filter(({ gain }) => gain > 0)
    .sort((one, other) => one.cents * other.gain - other.cents * one.gain);
}

/** How much shorter a way is tried, in the job's units. */
const shortening = {
  us: { typed: '10 ft', si: toSI(10, 'ft') },
  si: { typed: '3 m', si: 3 },
} as const;

/** The run of a path on which a foot of pipe loses most, among those that could be shorter, made so. */
function steepest(
  network: Network,
  solution: Solution,
  path: readonly number[],
): { at: number; run: Run; by: Quantity } | undefined {
  const by = shortening[network.job.units];
  const at = path
    .filter((one) => network.length[one]! - by.si > Math.abs(network.rise[one]!))
    .reduce<number | undefined>(
      (best, one) => (best === undefined || solution.gradient[one]! > solution.gradient[best]! ? one : best),
      undefined,
    );
  if (at === undefined) return undefined;
  const run = network.runs[at]!;
  const si = run.length.si - by.si;
  return { at, by, run: { ...run, length: { typed: `${run.length.typed} - ${by.typed}`, si } } };
}
