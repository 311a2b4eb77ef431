import { type Bin, binOf, costOf, type Pick } from './cut-stock-bin.ts';
import { picksInOrder } from './cut-stock-greedy.ts';
import type { Load, Room } from './cut-stock-load.ts';

/** How often a list is packed, each time with other values. */
const rounds = 20;

/** How much a round's waste changes the value of a piece. */
const weightOfRound = 0.3;

/**
 * Fills stick by stick: on each the piece left that is worth most for its length, and beside it what is worth most
 * together. At first a piece is worth its length, and the longest comes first; a round later it is worth more if its
 * stick was badly filled, so that pieces that are hard to place find theirs sooner. (Sequential value correction.)
 *
 * @param bound ends the search when it is reached
 */
export function fillByValue(loads: readonly Load[], rooms: readonly Room[], bound: number): Bin[] {
  const picks = picksInOrder(loads, rooms);
  const rate = Math.min(...rooms.map(({ cost, capacity }) => cost / capacity));
  const value = new Map(picks.map((pick) => [pick, pick.form.weight]));
  let best: Bin[] | undefined;
  for (let round = 0; round < rounds; round++) {
    const bins = fillInTurn(picks, rooms, value);
    if (best === undefined || costOf(bins) < costOf(best)) best = bins;
    if (costOf(best) <= bound) break;
    for (const { picks: together, room, weight } of bins) {
      const dear = room.cost / (rate * weight);
      for (const pick of together)
        value.set(
          pick,
          value.get(pick)! * (1 - weightOfRound) + pick.form.weight * dear ** 2 * weightOfRound,
        );
    }
  }
  return best ?? [];
}

function fillInTurn(picks: readonly Pick[], rooms: readonly Room[], value: ReadonlyMap<Pick, number>): Bin[] {
  const bins: Bin[] = [];
  const dense = (pick: Pick): number => value.get(pick)! / pick.form.weight;
  const byDensity = [...picks].sort((one, other) => dense(other) - dense(one));
  const placed = new Set<Pick>();
  for (const first of byDensity) {
    if (placed.has(first)) continue;
    const others = byDensity
      .filter((pick) => !placed.has(pick) && pick !== first)
      .map((pick) => ({ pick, weight: pick.form.weight, value: value.get(pick)! }));
    let best: { readonly rate: number; readonly bin: Bin } | undefined;
    for (const { capacity, cost } of rooms) {
      if (capacity < first.form.weight) continue;
      const bin = binOf([first, ...worthMost(others, capacity - first.form.weight)], rooms);
      const rate = Math.min(cost, bin.room.cost) / bin.weight;
      if (best === undefined || rate < best.rate) best = { rate, bin };
    }
    bins.push(best!.bin);
    best!.bin.picks.forEach((pick) => {
      placed.add(pick);
    });
  }
  return bins;
}

/** How many steps the search for one stick may take before it keeps the best seen. */
const mostSteps = 1500;

interface Valued {
  readonly pick: Pick;
  readonly weight: number;
  readonly value: number;
}

/** Picks, worth most for their length first, that are worth most together in `space`: depth first, cut off by density. */
function worthMost(picks: readonly Valued[], space: number): Pick[] {
  let best: readonly Pick[] = [];
  let most = 0;
  let steps = 0;
  const taken: Pick[] = [];
  const search = (from: number, left: number, worth: number): void => {
    if (worth > most) {
      most = worth;
      best = [...taken];
    }
    for (let at = from; at < picks.length; at++) {
      const { pick, weight, value } = picks[at]!;
      if (worth + (left * value) / weight <= most * (1 + 1e-9) || ++steps > mostSteps) return;
      if (weight > left) continue;
      taken.push(pick);
      search(at + 1, left - weight, worth + value);
      taken.pop();
    }
  };
  search(0, space, 0);
  return [...best];
}
