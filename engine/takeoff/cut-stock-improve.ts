import { type Bin, costOf } from './cut-stock-bin.ts';
import { type Choice, packExactly } from './cut-stock-exact.ts';
import type { Room } from './cut-stock-load.ts';

/** Pieces, or pieces kept together, that are packed anew at a time. */
const atOnce = 9;

/**
 * Takes a few sticks at a time, packs what is on them anew at least cost, and keeps the result if it costs no more;
 * of equal costs the one with the longer off-cuts, on which a later step can build. The sticks are drawn by a
 * generator with a fixed seed: the same list always gives the same packing.
 *
 * @param bound ends the search when it is reached
 * @param steps most groups of sticks that are tried
 */
export function improve(start: readonly Bin[], rooms: readonly Room[], bound: number, steps: number): Bin[] {
  const bins = [...start];
  const draw = generator(1);
  const longest = Math.max(...rooms.map(({ capacity }) => capacity));
  const rate = Math.min(...rooms.map(({ cost, capacity }) => cost / capacity));
  const waste = ({ room, weight }: Bin): number => room.cost - rate * weight;
  const merit = (group: readonly Bin[]): number =>
    group.reduce((sum, { room, weight }) => sum + ((room.capacity - weight) / longest) ** 2, 0);
  let cost = costOf(bins);

  for (let step = 0; step < steps && cost > bound && bins.length > 1; step++) {
    const drawn = Array.from({ length: 3 }, () => draw(bins.length));
    const group = [drawn.reduce((worst, at) => (waste(bins[at]!) > waste(bins[worst]!) ? at : worst))];
    const size = Math.min(bins.length, 2 + draw(3));
    while (group.length < size) {
      const at = draw(bins.length);
      if (!group.includes(at)) group.push(at);
    }
    const before = group.map((at) => bins[at]!);
    const share = Math.floor(atOnce / size);
    const after = packExactly(
      before.flatMap((bin) => choicesOf(bin, share, draw)),
      rooms,
    );
    const gained = costOf(before) - costOf(after);
    if (gained < 0 || (gained === 0 && merit(after) < merit(before))) continue;
    cost -= gained;
    for (const at of group.sort((one, other) => other - one)) bins.splice(at, 1);
    bins.push(...after);
  }
  return bins;
}

/** The picks of a stick, each with all its ways where there are few, else put together at random into `share` lots. */
function choicesOf({ picks }: Bin, share: number, draw: (below: number) => number): Choice[] {
  if (picks.length <= share)
    return picks.map(({ load }) => ({ ways: load.forms.map((form) => [{ load, form }]) }));
  const lots: Bin['picks'][number][][] = Array.from({ length: share }, () => []);
  for (const pick of picks) lots[draw(share)]!.push(pick);
  return lots.filter((lot) => lot.length > 0).map((lot) => ({ ways: [lot] }));
}

/** Whole numbers below a limit from a 32-bit xorshift (Marsaglia 2003), seeded. */
function generator(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}
