/** Lengths that must be cut, each so many times, from stock in any number. */
export interface CutProgramme {
  /** Whole numbers, each once, rising. */
  readonly weights: readonly number[];
  readonly demands: readonly number[];
  readonly capacities: readonly number[];
  readonly costs: readonly number[];
}

/** What one unit of each length is worth, so that no way to cut a stock length is worth more than it costs. */
export type Values = Float64Array;

/** A way to cut a stock length: how many of each length. */
type Pattern = Int32Array;

/**
 * Values with a large total, by the column generation of Gilmore and Gomory (1961): a linear programme over patterns
 * is solved by the simplex method, and the pattern that is worth most at its prices enters, until none is worth more
 * than its stock. Stopped early, it still gives the best values seen, scaled down by what they violate (Farley 1990).
 *
 * @param effort most elementary operations
 */
export function cutValues(programme: CutProgramme, effort: number): Values {
  const { weights, demands, capacities, costs } = programme;
  const rows = weights.length;
  const { inverse, level, value } = singleCuts(programme);
  let spent = 0;
  const move = new Float64Array(rows);
  const capacity = Math.max(...capacities);
  let best: Values = new Float64Array(rows);
  let bestTotal = 0;
  const worthAt = (at: Values): Worth => {
    spent += rows * capacity;
    const worth = mostWorth(weights, at, capacity);
    const over = Math.max(...capacities.map((space, room) => worth.total[space]! / costs[room]!));
    const total = at.reduce((sum, each, row) => sum + each * demands[row]!, 0) / over;
    if (total > bestTotal) {
      bestTotal = total;
      best = at.map((each) => each / over);
    }
    return worth;
  };
  for (const at of startingValues(programme)) worthAt(at);

  const enter = (pattern: ArrayLike<number>, cost: number): void => {
    let gain = cost;
    for (let at = 0; at < rows; at++) gain -= value[at]! * pattern[at]!;
    let leaving = -1;
    let ratio = Number.POSITIVE_INFINITY;
    for (let row = 0; row < rows; row++) {
      let sum = 0;
      const start = row * rows;
      for (let at = 0; at < rows; at++) if (pattern[at] !== 0) sum += inverse[start + at]! * pattern[at]!;
      move[row] = sum;
      if (sum <= 1e-9) continue;
      const steps = level[row]! / sum;
      if (steps < ratio - 1e-12 || (steps < ratio + 1e-12 && sum > move[leaving]!)) {
        ratio = Math.min(ratio, steps);
        leaving = row;
      }
    }
    if (leaving < 0) return;
    spent += rows * rows;
    const pivot = move[leaving]!;
    const pivotStart = leaving * rows;
    for (let at = 0; at < rows; at++) inverse[pivotStart + at]! /= pivot;
    level[leaving] = Math.max(0, level[leaving]! / pivot);
    for (let row = 0; row < rows; row++) {
      const factor = move[row]!;
      if (row === leaving || factor === 0) continue;
      const start = row * rows;
      for (let at = 0; at < rows; at++) inverse[start + at]! -= factor * inverse[pivotStart + at]!;
      level[row] = Math.max(0, level[row]! - factor * level[leaving]!);
    }
    for (let at = 0; at < rows; at++) value[at]! += gain * inverse[pivotStart + at]!;
  };

  let missed = 0;
  while (spent < effort) {
    const negative = value.findIndex((each) => each < -1e-9);
    if (negative >= 0) {
      // More may be cut of a length than is needed.
      enter(
        weights.map((_, at) => (at === negative ? -1 : 0)),
        0,
      );
      continue;
    }
    // Between the best values and those of the simplex, which swing: nearer to the latter while nothing enters.
    const inner = Math.max(0, 1 - (missed + 1) * (1 - nearness));
    const at = value.map((each, row) => inner * best[row]! + (1 - inner) * Math.max(0, each));
    const worth = worthAt(at);
    let entered = false;
    for (const { pattern, cost } of worthMost(programme, at, worth)) {
      let now = 0;
      for (let row = 0; row < rows; row++) now += value[row]! * pattern[row]!;
      if (now <= cost * (1 + 1e-9)) continue;
      enter(pattern, cost);
      entered = true;
    }
    if (!entered && inner === 0) break;
    missed = entered ? 0 : missed + 1;
  }
  return best;
}

/** How many of {@link startingValues} are tried, about. */
const starts = 24;

/**
 * Values to start from, by the length of the longest stock: for a limit up to half of it, a length below the limit is
 * worth nothing, one that leaves less than the limit a whole stock, and one between its share (Martello and Toth
 * 1990). With a limit of nothing every length is worth its share.
 */
function startingValues({ weights, capacities }: CutProgramme): Values[] {
  const capacity = Math.max(...capacities);
  const limits = weights.filter((weight) => 2 * weight <= capacity);
  const every = Math.ceil(limits.length / starts);
  return [0, ...limits.filter((_, at) => at % every === 0)].map((limit) =>
    Float64Array.from(weights, (weight) => {
      if (weight < limit) return 0;
      return weight > capacity - limit ? capacity : weight;
    }),
  );
}

/** How near the search stays to the best values seen, from 0 to 1. */
const nearness = 0.8;

/** How many patterns of one search may enter, at most. */
const mostEntering = 40;

/** For each length the pattern with it that is worth most over the cost of its stock, the best first. */
function worthMost(
  { weights, capacities, costs }: CutProgramme,
  value: Values,
  worth: Worth,
): { readonly pattern: Pattern; readonly cost: number }[] {
  return capacities
    .flatMap((space, at) =>
      weights.flatMap((weight, row) => {
        if (weight > space) return [];
        const over = (value[row]! + worth.total[space - weight]!) / costs[at]!;
        return [{ over, row, rest: space - weight, cost: costs[at]! }];
      }),
    )
    .sort((one, other) => other.over - one.over || one.row - other.row)
    .slice(0, mostEntering)
    .map(({ row, rest, cost }) => {
      const pattern = worth.pattern(rest);
      pattern[row]!++;
      return { pattern, cost };
    });
}

/** The simplex method's start: one pattern for each length, as many of it as the stock holds that is cheapest for it. */
function singleCuts({ weights, demands, capacities, costs }: CutProgramme): {
  inverse: Float64Array;
  level: Float64Array;
  value: Float64Array;
} {
  const rows = weights.length;
  const inverse = new Float64Array(rows * rows);
  const level = new Float64Array(rows);
  const value = new Float64Array(rows);
  weights.forEach((weight, row) => {
    let [count, least] = [0, Number.POSITIVE_INFINITY];
    capacities.forEach((space, at) => {
      const fits = Math.floor(space / weight);
      if (fits === 0 || costs[at]! / fits >= least) return;
      [count, least] = [fits, costs[at]! / fits];
    });
    inverse[row * rows + row] = 1 / count;
    level[row] = demands[row]! / count;
    value[row] = least;
  });
  return { inverse, level, value };
}

interface Worth {
  /** By capacity. */
  readonly total: Float64Array;
  /** What is worth that. */
  readonly pattern: (space: number) => Pattern;
}

/** The most that lengths cut from each capacity can be worth, any number of each: an unbounded knapsack. */
export function mostWorth(weights: readonly number[], value: ArrayLike<number>, capacity: number): Worth {
  const total = new Float64Array(capacity + 1);
  const last = new Int32Array(capacity + 1).fill(-1);
  let shorter = 0;
  weights.forEach((weight, at) => {
    const worth = value[at]!;
    // A shorter length that is worth no less always serves better.
    if (worth <= shorter) return;
    shorter = worth;
    for (let space = weight; space <= capacity; space++) {
      const sum = total[space - weight]! + worth;
      if (sum <= total[space]!) continue;
      total[space] = sum;
      last[space] = at;
    }
  });
  const pattern = (space: number): Pattern => {
    const counts = new Int32Array(weights.length);
    for (let left = space; last[left]! >= 0; left -= weights[last[left]!]!) counts[last[left]!]!++;
    return counts;
  };
  return { total, pattern };
}
