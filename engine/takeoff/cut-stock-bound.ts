import { cheapestCover, divisor } from './cut-stock-cover.ts';
import { cutValues, mostWorth } from './cut-stock-duals.ts';
import type { Load, Room } from './cut-stock-load.ts';

/** No packing costs less than the cheapest stock that is as long, in all, as the pieces with their cuts. */
export function coverBound(loads: readonly Load[], rooms: readonly Room[]): number {
  return cheapestCover(weightOf(loads, rooms), rooms, 'bound').cost;
}

/** The length of the pieces with one cut for each part, however a spliced piece is divided. */
export function weightOf(loads: readonly Load[], rooms: readonly Room[]): number {
  const capacity = new Map(rooms.map((room) => [room.stock, room.capacity]));
  return loads.reduce((sum, { forms }) => {
    const { whole, weight } = forms[0]!;
    return whole.reduce((total, stock) => total + capacity.get(stock)!, sum + weight);
  }, 0);
}

/** Steps into which the longest stock is divided at most; finer lengths are rounded down, which keeps the bound true. */
const mostSteps = 500;

/** Elementary operations for one bound; about a third of a second. */
const effort = 80_000_000;

/**
 * A bound on the cost of any packing with the fewest couplings, from what each length is worth at most: see
 * {@link cutValues}. It sees what {@link coverBound} does not, that some lengths cannot share a stick without waste.
 *
 * The values are rounded down to whole numbers and held against every way to cut the stock once more, so that the
 * bound is proved whatever the floating-point arithmetic before it has lost.
 */
export function valueBound(loads: readonly Load[], rooms: readonly Room[]): number {
  const all = loads.flatMap(({ forms }) => forms.map(({ weight }) => weight));
  const common = [...all, ...rooms.map(({ capacity }) => capacity)].reduce(divisor, 0);
  const longest = Math.max(...rooms.map(({ capacity }) => capacity));
  const step = Math.max(common, Math.ceil(longest / mostSteps));
  const inSteps = (length: number): number => Math.floor(length / step);
  const capacities = rooms.map(({ capacity }) => inSteps(capacity));
  const costs = rooms.map(({ cost }) => cost);

  // Of a spliced piece the values see the form with the least to cut; the bound below takes its cheapest.
  const demand = new Map<number, number>();
  for (const { forms } of loads) {
    const weight = inSteps(forms[0]!.weight);
    if (weight > 0) demand.set(weight, (demand.get(weight) ?? 0) + 1);
  }
  const weights = [...demand.keys()].sort((one, other) => one - other);
  if (weights.length === 0) return 0;
  const demands = weights.map((weight) => demand.get(weight)!);
  const values = cutValues({ weights, demands, capacities, costs }, effort);

  const total = values.reduce((sum, value, at) => sum + value * demands[at]!, 0);
  const scale = 2 ** (49 - Math.ceil(Math.log2(total + Math.max(...costs) + 1)));
  const whole = values.map((value) => Math.floor(value * scale));
  const worth = mostWorth(weights, whole, Math.max(...capacities));
  const over = Math.max(...capacities.map((space, at) => worth.total[space]! / costs[at]!));
  if (over === 0) return 0;

  // What is longer is worth no less: cutting it as the shorter one would fit as well.
  const worthOf = (weight: number): number => {
    const steps = inSteps(weight);
    let most = 0;
    for (let at = 0; at < weights.length && weights[at]! <= steps; at++) most = Math.max(most, whole[at]!);
    return most / over;
  };
  const bound = loads.reduce(
    (sum, { forms }) => sum + Math.min(...forms.map(({ wholeCost, weight }) => wholeCost + worthOf(weight))),
    0,
  );
  // Far more than the additions above can lose, and far less than one part of any cost.
  return roundUp(bound * (1 - 1e-11), costs);
}

/** Every cost is a multiple of the greatest common divisor of the stock's costs. */
function roundUp(bound: number, costs: readonly number[]): number {
  const common = costs.reduce(divisor, 0);
  return Math.ceil(bound / common) * common;
}
