import { type Bin, binOf, type Pick, roomFor } from './cut-stock-bin.ts';
import type { Room } from './cut-stock-load.ts';

/** Most pieces for which {@link packExactly} is asked: its time grows threefold with each. */
export const mostExact = 14;

/** Something that goes onto one stick, in one of several ways; several pieces that stay together are one choice. */
export interface Choice {
  readonly ways: readonly (readonly Pick[])[];
}

/** A set of choices on one stick, each in one of its ways. */
interface Held {
  readonly weight: number;
  readonly wholeCost: number;
  readonly way: number;
  readonly rest: Held | undefined;
}

/**
 * The cheapest packing, by dynamic programming over the subsets of what is to be packed: a set costs the cheapest of
 * its subsets with its first member on one stick, and the rest. Of equal costs it takes the one whose off-cuts are
 * least even (the sum of their squares is largest), since one long off-cut can be used.
 */
export function packExactly(choices: readonly Choice[], rooms: readonly Room[]): Bin[] {
  const sets = 1 << choices.length;
  const longest = Math.max(...rooms.map(({ capacity }) => capacity));
  const onOneStick = heldBySet(choices, longest);
  const stick = new Float64Array(sets).fill(Number.POSITIVE_INFINITY);
  const chosen: (Held | undefined)[] = new Array(sets);
  for (let set = 1; set < sets; set++) {
    for (const held of onOneStick[set]!) {
      const room = roomFor(rooms, held.weight)!;
      // Costs are whole numbers, so that what all squares together take off never outweighs one.
      const value =
        held.wholeCost + room.cost - ((room.capacity - held.weight) / longest) ** 2 / (2 * choices.length);
      if (value >= stick[set]!) continue;
      stick[set] = value;
      chosen[set] = held;
    }
  }

  const best = new Float64Array(sets);
  const first = new Int32Array(sets);
  for (let set = 1; set < sets; set++) {
    const lowest = set & -set;
    const others = set ^ lowest;
    let least = Number.POSITIVE_INFINITY;
    for (let sub = others; ; sub = (sub - 1) & others) {
      const value = stick[sub | lowest]! + best[others ^ sub]!;
      if (value < least) {
        least = value;
        first[set] = sub | lowest;
      }
      if (sub === 0) break;
    }
    best[set] = least;
  }

  const bins: Bin[] = [];
  for (let set = sets - 1; set > 0; set ^= first[set]!)
    bins.push(binOf(picksOf(choices, first[set]!, chosen[first[set]!]!), rooms));
  return bins;
}

/** For each set, the ways to hold it on one stick that no other way beats in both weight and cost. */
function heldBySet(choices: readonly Choice[], longest: number): (readonly Held[])[] {
  const sized = choices.map(({ ways }) =>
    ways.map((picks, way) => ({
      way,
      weight: picks.reduce((sum, { form }) => sum + form.weight, 0),
      wholeCost: picks.reduce((sum, { form }) => sum + form.wholeCost, 0),
    })),
  );
  const table: (readonly Held[])[] = [[{ weight: 0, wholeCost: 0, way: 0, rest: undefined }]];
  for (let set = 1; set < 1 << choices.length; set++) {
    const member = 31 - Math.clz32(set & -set);
    const grown: Held[] = [];
    for (const rest of table[set & (set - 1)]!)
      for (const { way, weight, wholeCost } of sized[member]!) {
        if (rest.weight + weight > longest) continue;
        grown.push({ weight: rest.weight + weight, wholeCost: rest.wholeCost + wholeCost, way, rest });
      }
    if (grown.length > 1)
      grown.sort((one, other) => one.weight - other.weight || one.wholeCost - other.wholeCost);
    let least = Number.POSITIVE_INFINITY;
    table.push(
      grown.length < 2
        ? grown
        : grown.filter(({ wholeCost }) => {
            if (wholeCost >= least) return false;
            least = wholeCost;
            return true;
          }),
    );
  }
  return table;
}

function picksOf(choices: readonly Choice[], set: number, held: Held): Pick[] {
  const picks: Pick[] = [];
  let [left, at]: [number, Held] = [set, held];
  while (left > 0) {
    picks.push(...choices[31 - Math.clz32(left & -left)]!.ways[at.way]!);
    left &= left - 1;
    at = at.rest!;
  }
  return picks;
}
