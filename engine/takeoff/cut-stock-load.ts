import type { Piece, StockLength } from './cut-stock-model.ts';

/** A stock length as packing sees it. */
export interface Room {
  readonly stock: number;
  /** Its length and one cut: n pieces need n - 1 cuts at least, so that each piece can be counted with one. */
  readonly capacity: number;
  readonly cost: number;
}

/** One way to make a piece: whole stock lengths, and what is left of it to be cut from a stick shared with others. */
export interface Form {
  /** Stock of each whole length. */
  readonly whole: readonly number[];
  readonly wholeCost: number;
  /** The length left and one cut. */
  readonly weight: number;
}

/** A piece with every way to make it. */
export interface Load {
  readonly piece: number;
  readonly forms: readonly Form[];
}

/** Stock from the cheapest on, of equal cost the longest first: the first that holds a weight is the one to take. */
export function roomsOf(stock: readonly StockLength[], perCut: number): Room[] {
  return stock
    .map(({ length, price }, at) => ({ stock: at, capacity: length + perCut, cost: price ?? length }))
    .sort((one, other) => one.cost - other.cost || other.capacity - one.capacity || one.stock - other.stock);
}

/**
 * A piece up to the longest stock is cut whole. A longer one is cut into as few parts as can be, and all but one of
 * the parts are whole stock lengths. That loses nothing: of two parts, each with other pieces on its stick, one can be
 * drawn out over its whole stick and the other shortened by as much, which makes room for those pieces beside it.
 */
export function loadsOf(pieces: readonly Piece[], rooms: readonly Room[], perCut: number): Load[] {
  const longest = Math.max(...rooms.map(({ capacity }) => capacity)) - perCut;
  return pieces.map(({ length }, piece) => ({
    piece,
    forms: formsOf(length, Math.ceil(length / longest) - 1, rooms, perCut),
  }));
}

/** Chooses `count` whole lengths that leave no more than a stock length; of equal remainders, the cheapest. */
function formsOf(length: number, count: number, rooms: readonly Room[], perCut: number): Form[] {
  const longest = Math.max(...rooms.map(({ capacity }) => capacity));
  const byWeight = new Map<number, Form>();
  const choose = (at: number, left: number, whole: readonly number[], wholeCost: number): void => {
    const open = count - whole.length;
    if (left - open * (longest - perCut) > longest - perCut) return;
    if (open === 0) {
      const weight = left + perCut;
      const before = byWeight.get(weight);
      if (before === undefined || wholeCost < before.wholeCost)
        byWeight.set(weight, { whole, wholeCost, weight });
      return;
    }
    rooms.slice(at).forEach(({ stock, capacity, cost }, ahead) => {
      choose(at + ahead, left - (capacity - perCut), [...whole, stock], wholeCost + cost);
    });
  };
  choose(0, length, [], 0);
  // What costs no less and leaves no less to be cut is never needed.
  const kept: Form[] = [];
  for (const form of [...byWeight.values()].sort((one, other) => one.weight - other.weight))
    if (kept.every(({ wholeCost }) => form.wholeCost < wholeCost)) kept.push(form);
  return kept;
}
