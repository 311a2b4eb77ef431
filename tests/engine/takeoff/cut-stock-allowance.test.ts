import { describe, expect, it } from 'vitest';
import { allowWaste } from '../../../engine/takeoff/cut-stock-allowance.ts';
import type { Piece, StockLength } from '../../../engine/takeoff/cut-stock-model.ts';

const sticks = (...lengths: readonly number[]): StockLength[] =>
  lengths.map((length) => ({ length, form: 'stick' }));
const pieces: Piece[] = [14, 14, 14, 8].map((length, at) => ({ id: `R${at}`, length, spliceable: true }));

describe('a waste allowance', () => {
  it('makes 50 ft and 10 % whole sticks of 60 ft in all', () => {
    // 55 ft; 60 ft is the least that whole sticks make up.
    const allowance = allowWaste(pieces, sticks(10, 20), 10);
    expect(allowance).toMatchObject({ ok: true, used: 50, allowed: 55, bought: 60, cost: 60 });
  });

  it('rounds what is allowed up, and allows nothing for nothing', () => {
    expect(allowWaste(pieces, sticks(20), 7)).toMatchObject({ allowed: 54, bought: 60 });
    expect(allowWaste(pieces, sticks(50), 0)).toMatchObject({
      allowed: 50,
      bought: 50,
      counts: [{ stock: { length: 50 }, count: 1 }],
    });
  });

  it('still refuses a home run that no coil holds', () => {
    const home: Piece = { id: 'K1', length: 120, spliceable: false };
    expect(allowWaste([home], sticks(100), 10)).toEqual({
      ok: false,
      tooLong: [{ id: 'K1', piece: 0, length: 120, longestStock: 100 }],
    });
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('of %d percent is refused', (percent) => {
    expect(() => allowWaste(pieces, sticks(20), percent)).toThrow(`percent is ${percent}`);
  });
});
