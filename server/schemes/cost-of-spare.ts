import {
  type Network,
  type PriceIndex,
  type Run,
  type SchemePrice,
  sizeScheme,
  solve,
} from '../../engine/index.ts';
import { priceRun } from '../../engine/takeoff/price-run.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { CostPoint, SchemeCost } from '../../views/schemes.ts';

/** As many runs as one request sizes; above it others would wait for seconds. */
export const mostSizedRuns = 3000;

/** How far below and above the supply's pressure the curve goes; wide of what pipe sizes can move. */
export const curveWindow = { below: toSI(60, 'psi'), above: toSI(100, 'psi') } as const;

/**
 * Least cost for each spare pressure, and where the scheme as drawn stands. Spare is what the street could lose
 * before the worst fixture is short: the supply's pressure less what the scheme asks at the street. In front of a
 * reducing valve that holds back it is more than the margin at the fixture.
 */
export function costOfSpare(network: Network, price: SchemePrice, prices: PriceIndex): SchemeCost {
  const drawn = pipeCost(network.runs, prices);
  if (price.total === undefined || drawn === undefined) {
    return { drawn: undefined, curve: [], why: 'A price is missing.' };
  }
  if (network.inlets.length === 0) return { drawn: undefined, curve: [], why: 'It serves no fixture yet.' };
  const available = solve(network).supplyPressure;
  const drawnNeed = needAsDrawn(network, prices);
  // The sizing knows nothing of devices; what the drawn scheme costs beyond its pipe and fittings is theirs.
  const devices = price.total.money.times(100).toNumber() - drawn.cents;
  const point = (cents: number, need: number): CostPoint => ({
    cents: cents + devices,
    spare: available - need,
  });
  const sized = sizeScheme(
    network,
    { prices, keep: new Set() },
    { least: available - curveWindow.below, most: available + curveWindow.above },
  );
  const { cost, need } = sized.curve ?? { cost: new Float64Array(0), need: new Float64Array(0) };
  const curve = Array.from(cost, (cents, at) => point(cents, need[at]!));
  return {
    drawn: drawnNeed === undefined ? undefined : point(drawn.cents, drawnNeed),
    curve,
    why: curve.length > 0 ? '' : 'No sizes hold every limit at any pressure near that of the supply.',
  };
}

/** What a scheme's pipe and fittings cost as drawn, cents and hours; undefined where a price is missing. */
export function pipeCost(
  runs: readonly Run[],
  prices: PriceIndex,
): { readonly cents: number; readonly hours: number } | undefined {
  let cents = 0;
  let hours = 0;
  for (const run of runs) {
    const priced = priceRun(prices, run, run.size);
    if (!priced.ok) return undefined;
    cents += priced.cents;
    hours += priced.hours;
  }
  return { cents, hours };
}

/** The least pressure at the street that a scheme manages with as drawn, Pa; undefined where none would do. */
function needAsDrawn(network: Network, prices: PriceIndex): number | undefined {
  // A sizing that may change nothing.
  const keep = new Set(network.runs.map(({ id }) => id));
  const everywhere = { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };
  return sizeScheme(network, { prices, keep }, everywhere).curve?.need[0];
}
