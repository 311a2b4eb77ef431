import { expect } from 'vitest';
import type { Packing, PackOptions, Piece } from '../../../engine/takeoff/cut-stock-model.ts';

/** What holds for every packing, whatever it costs, counted from its sticks and cuts alone. */
export function expectSound(
  packing: Packing,
  pieces: readonly Piece[],
  { perCut = 0 }: PackOptions = {},
): void {
  const { sticks, totals, cost, bound, gap } = packing;
  const cutOf = pieces.map(() => ({ length: 0, parts: [] as number[] }));
  for (const { stock, cuts, offCut, lostToCuts } of sticks) {
    const length = cuts.reduce((sum, cut) => sum + cut.length, 0);
    expect(cuts.length).toBeGreaterThan(0);
    expect(length + lostToCuts + offCut).toBe(stock.length);
    expect(offCut).toBeGreaterThanOrEqual(0);
    // A cut between two pieces, and one before the off-cut.
    expect(lostToCuts).toBeGreaterThanOrEqual((cuts.length - 1) * perCut);
    if (offCut > 0) expect(lostToCuts).toBe(cuts.length * perCut);
    for (const { id, piece, length: cut, part, parts } of cuts) {
      expect(id).toBe(pieces[piece]!.id);
      expect(cut).toBeGreaterThan(0);
      cutOf[piece]!.length += cut;
      cutOf[piece]!.parts.push(part);
      if (!pieces[piece]!.spliceable) expect(parts).toBe(1);
    }
  }
  expect(cutOf.map(({ length }) => length)).toEqual(pieces.map(({ length }) => length));
  for (const { parts } of cutOf)
    expect(parts.sort((one, other) => one - other)).toEqual(parts.map((_, at) => at + 1));
  expect(totals.couplings).toBe(cutOf.reduce((sum, { parts }) => sum + parts.length - 1, 0));
  expect(totals.used).toBe(pieces.reduce((sum, { length }) => sum + length, 0));
  expect(totals.bought).toBe(totals.used + totals.lostToCuts + totals.offCuts);
  expect(totals.bought).toBe(totals.counts.reduce((sum, { stock, count }) => sum + stock.length * count, 0));
  expect(cost).toBe(sticks.reduce((sum, { stock }) => sum + (stock.price ?? stock.length), 0));
  expect(bound).toBeLessThanOrEqual(cost);
  expect(gap).toBeCloseTo(bound === 0 ? 0 : cost / bound - 1, 12);
  expect(packing.provedLeast).toBe(cost === bound);
}
