import type { Cut, CutStick, PackTotals, Piece, StockLength } from './cut-stock-model.ts';

/** What is cut from one stick, before its parts are numbered. */
export interface RawStick {
  readonly stock: number;
  readonly cuts: readonly { readonly piece: number; readonly length: number }[];
}

/**
 * Sticks in the order in which they are cut: by stock, the longest first, then by their longest cuts. On a stick the
 * longest piece is cut first. Parts of a piece are numbered in the order in which they are met.
 */
export function layOutSticks(
  raw: readonly RawStick[],
  pieces: readonly Piece[],
  stock: readonly StockLength[],
  perCut: number,
): { sticks: CutStick[]; totals: PackTotals } {
  const sorted = raw
    .map(({ stock: at, cuts }) => ({
      at,
      cuts: [...cuts].sort((one, other) => other.length - one.length || one.piece - other.piece),
    }))
    .sort(
      (one, other) =>
        stock[other.at]!.length - stock[one.at]!.length ||
        one.at - other.at ||
        other.cuts[0]!.length - one.cuts[0]!.length ||
        one.cuts[0]!.piece - other.cuts[0]!.piece,
    );
  const parts = pieces.map(() => ({ met: 0, all: 0 }));
  for (const { cuts } of sorted) for (const { piece } of cuts) parts[piece]!.all++;
  const sticks = sorted.map(({ at, cuts }): CutStick => {
    const length = cuts.reduce((sum, cut) => sum + cut.length, 0);
    const left = stock[at]!.length - length;
    // The last cut frees the off-cut: where nothing is left there is none, and what is shorter than a cut goes with it.
    const lostToCuts = Math.min(left, cuts.length * perCut);
    return {
      stock: stock[at]!,
      cuts: cuts.map(
        (cut): Cut => ({
          id: pieces[cut.piece]!.id,
          ...cut,
          part: ++parts[cut.piece]!.met,
          parts: parts[cut.piece]!.all,
        }),
      ),
      lostToCuts,
      offCut: left - lostToCuts,
    };
  });
  const sum = (of: (stick: CutStick) => number): number =>
    sticks.reduce((total, stick) => total + of(stick), 0);
  return {
    sticks,
    totals: {
      used: sum(({ cuts }) => cuts.reduce((total, { length }) => total + length, 0)),
      lostToCuts: sum((stick) => stick.lostToCuts),
      offCuts: sum(({ offCut }) => offCut),
      bought: sum((stick) => stick.stock.length),
      couplings: sum(({ cuts }) => cuts.length) - pieces.length,
      counts: stock.flatMap((one) => {
        const count = sticks.filter((stick) => stick.stock === one).length;
        return count === 0 ? [] : [{ stock: one, count }];
      }),
    },
  };
}
