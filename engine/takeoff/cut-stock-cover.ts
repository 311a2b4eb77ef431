import type { Room } from './cut-stock-load.ts';

/** Steps into which a length is divided at most. */
const mostCells = 200_000;

/** How many of each room, in the order of the rooms, and what they cost. */
export interface Cover {
  readonly counts: readonly number[];
  readonly cost: number;
}

/**
 * The cheapest stock with `need` capacity or more in all, by dynamic programming in steps of the greatest common
 * divisor of the capacities. Where that makes more than 200 000 steps, lengths are rounded to coarser ones.
 *
 * @param rounding `enough`: whatever it rounds, the stock suffices; `bound`: whatever it rounds, no stock that
 * suffices costs less
 */
export function cheapestCover(need: number, rooms: readonly Room[], rounding: 'enough' | 'bound'): Cover {
  const step = Math.max(
    rooms.reduce((common, { capacity }) => divisor(common, capacity), 0),
    // No coarser than the shortest stock, which would count for nothing.
    Math.min(Math.ceil(need / mostCells), ...rooms.map(({ capacity }) => capacity)),
  );
  const cells = rounding === 'enough' ? Math.ceil(need / step) : Math.floor(need / step);
  // In steps of the divisor a part of a step needs a whole one in either rounding.
  const exact = rooms.every(({ capacity }) => capacity % step === 0);
  const target = exact ? Math.ceil(need / step) : cells;
  const sizes = rooms.map(({ capacity }) =>
    rounding === 'enough' ? Math.floor(capacity / step) : Math.ceil(capacity / step),
  );
  const least = new Float64Array(target + 1).fill(Number.POSITIVE_INFINITY);
  const last = new Int32Array(target + 1);
  least[0] = 0;
  for (let cell = 1; cell <= target; cell++)
    sizes.forEach((size, at) => {
      const cost = rooms[at]!.cost + least[Math.max(0, cell - size)]!;
      if (size === 0 || cost >= least[cell]!) return;
      least[cell] = cost;
      last[cell] = at;
    });
  const counts = rooms.map(() => 0);
  for (let cell = target; cell > 0; cell -= sizes[last[cell]!]!) counts[last[cell]!]!++;
  return { counts, cost: least[target]! };
}

/** Greatest common divisor of whole numbers; of 0 and a number, the number. */
export function divisor(one: number, other: number): number {
  return other === 0 ? one : divisor(other, one % other);
}
