/**
 * A trade-off between cost and pressure: points in order of rising cost and falling need, none worse than another
 * in both. Cost in whole cents, need in Pa at one place of the network.
 */
export interface Front {
  readonly cost: Float64Array;
  readonly need: Float64Array;
}

/** A way to make one run: what it costs, and what it loses between its ends, Pa. */
export interface Choice {
  readonly cost: number;
  readonly loss: number;
}

/** A front whose points remember how they were made: by which choice, upon which point. */
export interface MadeFront extends Front {
  readonly choice: Uint8Array;
  readonly upon: Int32Array;
}

/** The front of one point. */
export function pointFront(cost: number, need: number): Front {
  return { cost: Float64Array.of(cost), need: Float64Array.of(need) };
}

/**
 * What two places fed from one point ask together: costs add, the larger need rules. Both fronts are walked once
 * from their cheapest points; the one with the larger need is the one to improve.
 *
 * @returns the joined front; empty where either is
 */
export function join(one: Front, other: Front): Front {
  const cost = new Float64Array(one.cost.length + other.cost.length);
  const need = new Float64Array(cost.length);
  let a = 0;
  let b = 0;
  let size = 0;
  while (a < one.cost.length && b < other.cost.length) {
    const needA = one.need[a]!;
    const needB = other.need[b]!;
    cost[size] = one.cost[a]! + other.cost[b]!;
    need[size++] = Math.max(needA, needB);
    if (needA >= needB) a++;
    if (needB >= needA) b++;
  }
  return { cost: cost.subarray(0, size), need: need.subarray(0, size) };
}

/** {@link join} of any number of fronts, in rounds of pairs, so that many small ones cost little. */
export function joinAll(fronts: readonly Front[]): Front {
  if (fronts.length === 0) return pointFront(0, Number.NEGATIVE_INFINITY);
  let round = fronts;
  while (round.length > 1) {
    const next: Front[] = [];
    for (let at = 0; at < round.length; at += 2) {
      const other = round[at + 1];
      next.push(other === undefined ? round[at]! : join(round[at]!, other));
    }
    round = next;
  }
  return round[0]!;
}

/** Pressures between which a place can be, Pa: with every run upstream at its least loss, and at its most. */
export interface Window {
  readonly most: number;
  readonly least: number;
}

/**
 * The front at the start of a run: each choice shifts the front at its end by its cost and loss, and only points
 * that no other beats stay. Of those, points that need more than there can ever be are dropped, and of the points
 * that manage with what there always is, only the cheapest stays.
 *
 * @param tolerance Pa; a point that lowers the need by no more than this against the last one kept is dropped too,
 *   which raises the need of what it would have made by at most this much; 0 keeps the front exact
 */
export function extend(
  behind: Front,
  choices: readonly Choice[],
  { most, least }: Window = { most: Number.POSITIVE_INFINITY, least: Number.NEGATIVE_INFINITY },
  tolerance = 0,
): MadeFront {
  const pointers = new Int32Array(choices.length);
  const { length } = behind.cost;
  let capacity = Math.max(16, length * 2);
  let cost = new Float64Array(capacity);
  let need = new Float64Array(capacity);
  let choice = new Uint8Array(capacity);
  let upon = new Int32Array(capacity);
  let size = 0;
  let lowest = Number.POSITIVE_INFINITY;
  let step = 0;
  for (;;) {
    let best = -1;
    let bestCost = Number.POSITIVE_INFINITY;
    let bestNeed = Number.POSITIVE_INFINITY;
    for (let at = 0; at < choices.length; at++) {
      const { cost: extra, loss } = choices[at]!;
      let pointer = pointers[at]!;
      while (
        pointer < length &&
        (behind.need[pointer]! + loss >= lowest - step || behind.need[pointer]! + loss > most)
      ) {
        pointer++;
      }
      pointers[at] = pointer;
      if (pointer === length) continue;
      const total = behind.cost[pointer]! + extra;
      const asked = behind.need[pointer]! + loss;
      if (total < bestCost || (total === bestCost && asked < bestNeed)) {
        best = at;
        bestCost = total;
        bestNeed = asked;
      }
    }
    if (best === -1) break;
    if (size === capacity) {
      capacity *= 2;
      cost = grown(cost, new Float64Array(capacity));
      need = grown(need, new Float64Array(capacity));
      choice = grown(choice, new Uint8Array(capacity));
      upon = grown(upon, new Int32Array(capacity));
    }
    cost[size] = bestCost;
    need[size] = bestNeed;
    choice[size] = best;
    upon[size++] = pointers[best]!;
    if (bestNeed <= least) break;
    lowest = bestNeed;
    step = tolerance;
  }
  return {
    cost: cost.slice(0, size),
    need: need.slice(0, size),
    choice: choice.slice(0, size),
    upon: upon.slice(0, size),
  };
}

function grown<A extends Float64Array | Uint8Array | Int32Array>(from: A, to: A): A {
  to.set(from as never);
  return to;
}

/** Index of the cheapest point that needs no more than `available`, or -1. */
export function cheapestWithin(front: Front, available: number): number {
  let low = 0;
  let high = front.need.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (front.need[middle]! <= available) high = middle;
    else low = middle + 1;
  }
  return low === front.need.length ? -1 : low;
}

/** The best of several fronts of one place: points that none of them beats. */
export function union(fronts: readonly Front[]): Front {
  const cost: number[] = [];
  const need: number[] = [];
  const pointers = fronts.map(() => 0);
  let lowest = Number.POSITIVE_INFINITY;
  for (;;) {
    let best = -1;
    fronts.forEach((front, at) => {
      let pointer = pointers[at]!;
      while (pointer < front.need.length && front.need[pointer]! >= lowest) pointer++;
      pointers[at] = pointer;
      if (pointer === front.need.length) return;
      const rival = best === -1 ? undefined : fronts[best]!;
      const against = best === -1 ? 0 : pointers[best]!;
      const cheaper =
        rival === undefined ||
        front.cost[pointer]! < rival.cost[against]! ||
        (front.cost[pointer] === rival.cost[against] && front.need[pointer]! < rival.need[against]!);
      if (cheaper) best = at;
    });
    if (best === -1) break;
    const taken = pointers[best]!;
    cost.push(fronts[best]!.cost[taken]!);
    lowest = fronts[best]!.need[taken]!;
    need.push(lowest);
  }
  return { cost: Float64Array.from(cost), need: Float64Array.from(need) };
}
