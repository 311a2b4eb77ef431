import { type Bin, costOf } from './cut-stock-bin.ts';
import { coverBound, valueBound } from './cut-stock-bound.ts';
import { mostExact, packExactly } from './cut-stock-exact.ts';
import { fillByValue } from './cut-stock-fill.ts';
import { packGreedily } from './cut-stock-greedy.ts';
import { improve } from './cut-stock-improve.ts';
import { checkCutList } from './cut-stock-input.ts';
import { joinOffCuts } from './cut-stock-join.ts';
import { type Load, loadsOf, type Room, roomsOf } from './cut-stock-load.ts';
import type { PackOptions, PackResult, Piece, StockLength } from './cut-stock-model.ts';
import { layOutSticks, type RawStick } from './cut-stock-sticks.ts';

/** Groups of sticks that are packed anew for a long list, at most: for each stick, and in all. */
const stepsPerStick = 200;
const mostSteps = 10_000;

/**
 * Cuts pieces of one material and size from sticks and coils so that the price of these is least, or where stock has
 * no prices the length bought.
 *
 * A piece that may not be spliced is cut whole. One that may, and is longer than any stock, is cut into as few parts
 * as can be, with a coupling between two; with `joinOffCuts` any piece that may be spliced is also cut where that
 * uses up off-cuts.
 *
 * Up to 14 pieces the packing is proved least among those with the fewest couplings. For more it is the best of a
 * search, and `bound` says what no packing can cost less than; where the two meet it is proved least as well. With
 * `joinOffCuts` the bound holds for any number of couplings, and the packing is proved least where it meets it. The
 * same list, stock and options always give the same packing.
 *
 * @returns the sticks with their cuts, or every piece that is longer than any stock and may not be spliced
 * @throws RangeError if the list is not in whole units above 0, or stock has prices only in part
 */
export function packPieces(
  pieces: readonly Piece[],
  stock: readonly StockLength[],
  options: PackOptions = {},
): PackResult {
  const tooLong = checkCutList(pieces, stock, options);
  if (tooLong.length > 0) return { ok: false, tooLong };
  const { perCut = 0, shortestPart = 1 } = options;
  const rooms = roomsOf(stock, perCut);
  const loads = loadsOf(pieces, rooms, perCut);
  const least = coverBound(loads, rooms);
  const { bins, bound: proved } = pack(loads, rooms, least);
  let raw = bins.flatMap((bin) => sticksOf(bin, stock, perCut));
  let bound = proved;
  if (options.joinOffCuts === true) {
    bound = least;
    raw = joinOffCuts(pieces, rooms, { perCut, shortestPart, below: costOf(bins) }) ?? raw;
  }
  const cost = raw.reduce((sum, { stock: at }) => sum + (stock[at]!.price ?? stock[at]!.length), 0);
  return {
    ok: true,
    ...layOutSticks(raw, pieces, stock, perCut),
    cost,
    bound,
    gap: cost === bound ? 0 : (cost - bound) / bound,
    provedLeast: cost === bound,
  };
}

/** The cheapest packing that is found with the fewest couplings, and a bound for all of those. */
function pack(
  loads: readonly Load[],
  rooms: readonly Room[],
  least: number,
): { readonly bins: readonly Bin[]; readonly bound: number } {
  if (loads.length <= mostExact) {
    const bins = packExactly(
      loads.map((load) => ({ ways: load.forms.map((form) => [{ load, form }]) })),
      rooms,
    );
    return { bins, bound: costOf(bins) };
  }
  const start = packGreedily(loads, rooms);
  if (costOf(start) === least) return { bins: start, bound: least };
  const bound = Math.max(least, valueBound(loads, rooms));
  const filled = fillByValue(loads, rooms, bound);
  const better = costOf(filled) < costOf(start) ? filled : start;
  return { bins: improve(better, rooms, bound, Math.min(mostSteps, stepsPerStick * better.length)), bound };
}

function sticksOf({ picks, room }: Bin, stock: readonly StockLength[], perCut: number): RawStick[] {
  return [
    {
      stock: room.stock,
      cuts: picks.map(({ load, form }) => ({ piece: load.piece, length: form.weight - perCut })),
    },
    ...picks.flatMap(({ load, form }) =>
      form.whole.map((at) => ({ stock: at, cuts: [{ piece: load.piece, length: stock[at]!.length }] })),
    ),
  ];
}
