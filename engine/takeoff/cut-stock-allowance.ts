import { cheapestCover } from './cut-stock-cover.ts';
import { checkCutList } from './cut-stock-input.ts';
import { roomsOf } from './cut-stock-load.ts';
import type { PackTotals, Piece, StockLength, TooLong } from './cut-stock-model.ts';

export interface Allowance {
  readonly ok: true;
  readonly used: number;
  /** The length used and the waste allowed for it, in whole units, rounded up. */
  readonly allowed: number;
  /** The whole sticks and coils that make it up at least cost. */
  readonly counts: PackTotals['counts'];
  readonly bought: number;
  readonly cost: number;
}

/**
 * Pipe by a waste allowance, with no cutting planned: the length used and so many percent more, in the cheapest whole
 * sticks and coils that are as long in all. It does not promise that the pieces can be cut from them.
 *
 * @param percent 0 or more; what the estimator allows, no published figure
 * @returns the stock, or every piece that is longer than any stock and may not be spliced
 * @throws RangeError as packPieces does, and if `percent` is no number from 0 up
 */
export function allowWaste(
  pieces: readonly Piece[],
  stock: readonly StockLength[],
  percent: number,
): Allowance | { readonly ok: false; readonly tooLong: readonly TooLong[] } {
  if (!Number.isFinite(percent) || percent < 0)
    throw new RangeError(`percent is ${percent}; expected a number, 0 or more`);
  const tooLong = checkCutList(pieces, stock, {});
  if (tooLong.length > 0) return { ok: false, tooLong };
  const used = pieces.reduce((sum, { length }) => sum + length, 0);
  const allowed = Math.ceil((used * (100 + percent)) / 100);
  const rooms = roomsOf(stock, 0);
  const cover = cheapestCover(allowed, rooms, 'enough');
  const count = new Map(rooms.map((room, at) => [room.stock, cover.counts[at]!]));
  const counts = stock.flatMap((one, at) =>
    count.get(at) === 0 ? [] : [{ stock: one, count: count.get(at)! }],
  );
  return {
    ok: true,
    used,
    allowed,
    counts,
    bought: counts.reduce((sum, { stock: one, count: many }) => sum + one.length * many, 0),
    cost: cover.cost,
  };
}
