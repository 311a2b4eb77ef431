/** A length of one material and size that a run needs. Lengths are whole numbers of one unit, see cut-stock-unit.ts. */
export interface Piece {
  /** Id of the run. */
  readonly id: string;
  readonly length: number;
  /** Whether it may be made of parts with couplings between; a home run may not. */
  readonly spliceable: boolean;
}

/** A stick or coil that can be bought, in any number. */
export interface StockLength {
  readonly length: number;
  readonly form: 'stick' | 'coil';
  /** Whole number of cents, or of another smallest coin; for every stock length or for none. */
  readonly price?: number;
}

export interface PackOptions {
  /** Length that each cut takes, the saw's or an allowance, in units; none where it is not given. */
  readonly perCut?: number;
  /**
   * Whether pieces that may be spliced are cut to use up off-cuts, with a coupling at each cut. Without it a piece is
   * cut only if it is longer than any stock, and then into as few parts as can be.
   */
  readonly joinOffCuts?: boolean;
  /**
   * Shortest part that is worth a coupling, in units; for what `joinOffCuts` cuts. A piece that is longer than any stock
   * may still end in a shorter part.
   */
  readonly shortestPart?: number;
}

/** What is cut from a stick: a whole piece, or one part of a spliced piece. */
export interface Cut {
  readonly id: string;
  /** Place of the piece in the list that came in. */
  readonly piece: number;
  readonly length: number;
  /** Counted from 1; a piece in one part is part 1 of 1. */
  readonly part: number;
  readonly parts: number;
}

/** One stick or coil, with its cuts in the order in which they are made. */
export interface CutStick {
  readonly stock: StockLength;
  readonly cuts: readonly Cut[];
  /** Taken by the cuts. */
  readonly lostToCuts: number;
  readonly offCut: number;
}

/** `bought` is `used` + `lostToCuts` + `offCuts`, to the unit. */
export interface PackTotals {
  readonly used: number;
  readonly lostToCuts: number;
  readonly offCuts: number;
  readonly bought: number;
  readonly couplings: number;
  /** How many of each stock length; those not bought are left out. */
  readonly counts: readonly { readonly stock: StockLength; readonly count: number }[];
}

export interface Packing {
  readonly ok: true;
  readonly sticks: readonly CutStick[];
  readonly totals: PackTotals;
  /** What was made least: the sum of the prices, or where stock has no prices the length bought, in units. */
  readonly cost: number;
  /** Proved: no packing costs less. */
  readonly bound: number;
  /** How far the cost is above the bound, as a part of it; 0 where the packing is proved best. */
  readonly gap: number;
  readonly provedLeast: boolean;
}

/** A piece that is longer than any stock and may not be spliced. */
export interface TooLong {
  readonly id: string;
  /** Place of the piece in the list that came in. */
  readonly piece: number;
  readonly length: number;
  readonly longestStock: number;
}

export type PackResult = Packing | { readonly ok: false; readonly tooLong: readonly TooLong[] };
