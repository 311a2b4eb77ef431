import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packPieces } from '../../../engine/takeoff/cut-stock.ts';
import type { Packing, PackOptions, Piece, StockLength } from '../../../engine/takeoff/cut-stock-model.ts';
import { expectSound } from './cut-stock-checks.ts';
import { drawFrom } from './cut-stock-programme.ts';

const piecesOf = (lengths: readonly number[], spliceable = false): Piece[] =>
  lengths.map((length, at) => ({ id: `R${at + 1}`, length, spliceable }));
const sticksOf = (...lengths: readonly number[]): StockLength[] =>
  lengths.map((length) => ({ length, form: 'stick' }));

function packed(pieces: readonly Piece[], stock: readonly StockLength[], options: PackOptions = {}): Packing {
  const result = packPieces(pieces, stock, options);
  if (!result.ok) throw new Error(`too long: ${result.tooLong.map(({ id }) => id).join(', ')}`);
  expectSound(result, pieces, options);
  return result;
}

/** Every way to divide pieces among sticks, without any cleverness; each stick is the cheapest that holds its share. */
function leastByEnumeration(
  lengths: readonly number[],
  stock: readonly StockLength[],
  perCut: number,
): number {
  let least = Number.POSITIVE_INFINITY;
  const divide = (at: number, shares: readonly (readonly number[])[]): void => {
    if (at === lengths.length) {
      const cost = shares.reduce((sum, share) => {
        const length = share.reduce((total, one) => total + one, 0) + (share.length - 1) * perCut;
        const holding = stock.filter((one) => one.length >= length).map((one) => one.price ?? one.length);
        return sum + Math.min(...holding);
      }, 0);
      least = Math.min(least, cost);
      return;
    }
    for (let place = 0; place <= shares.length; place++)
      divide(at + 1, [
        ...shares.slice(0, place),
        [...(shares[place] ?? []), lengths[at]!],
        ...shares.slice(place + 1),
      ]);
  };
  divide(0, []);
  return least;
}

describe('packing by hand', () => {
  it('lays 12, 8, 11, 9, 10 and 10 ft on three sticks of 20 ft', () => {
    const { sticks, totals, provedLeast } = packed(piecesOf([12, 8, 11, 9, 10, 10]), sticksOf(20));
    expect(sticks.map(({ cuts }) => cuts.map(({ length }) => length))).toEqual([
      [12, 8],
      [11, 9],
      [10, 10],
    ]);
    expect(totals).toMatchObject({ bought: 60, offCuts: 0, couplings: 0 });
    expect(provedLeast).toBe(true);
  });

  it('buys a stick of 10 ft where one of 20 would leave more', () => {
    const { totals } = packed(piecesOf([13, 7, 9]), sticksOf(10, 20));
    expect(totals.counts.map(({ stock, count }) => [stock.length, count])).toEqual([
      [10, 1],
      [20, 1],
    ]);
    expect(totals.offCuts).toBe(1);
  });

  it('counts the saw cut between two pieces, and none where a piece is the whole stick', () => {
    expect(packed(piecesOf([119, 120]), sticksOf(240), { perCut: 1 }).totals).toMatchObject({
      bought: 240,
      lostToCuts: 1,
      offCuts: 0,
    });
    expect(packed(piecesOf([120, 120]), sticksOf(240), { perCut: 1 }).totals.bought).toBe(480);
    expect(packed(piecesOf([240]), sticksOf(240), { perCut: 1 }).totals).toMatchObject({
      bought: 240,
      lostToCuts: 0,
    });
    // The second cut takes what little is left.
    expect(packed(piecesOf([119, 119]), sticksOf(240), { perCut: 2 }).totals).toMatchObject({
      lostToCuts: 2,
      offCuts: 0,
    });
  });

  it('couples a run of 47 ft from two sticks of 20 ft and 7 ft of a third, and uses the rest of that', () => {
    const pieces: Piece[] = [
      { id: 'main', length: 47, spliceable: true },
      { id: 'branch', length: 13, spliceable: false },
    ];
    const { sticks, totals } = packed(pieces, sticksOf(20));
    expect(totals).toMatchObject({ bought: 60, offCuts: 0, couplings: 2 });
    expect(
      sticks.map(({ cuts }) => cuts.map(({ id, length, part, parts }) => [id, length, part, parts])),
    ).toEqual([
      [['main', 20, 1, 3]],
      [['main', 20, 2, 3]],
      [
        ['branch', 13, 1, 1],
        ['main', 7, 3, 3],
      ],
    ]);
  });

  it('makes 24 of two twelves, not of a twenty and a piece of a twelve', () => {
    expect(packed(piecesOf([24], true), sticksOf(12, 20)).totals).toMatchObject({ bought: 24, couplings: 1 });
  });

  it('makes the price least, not the length, where stock has prices', () => {
    const stock: StockLength[] = [
      { length: 100, form: 'coil', price: 40_00 },
      { length: 300, form: 'coil', price: 75_00 },
    ];
    const { cost, totals } = packed(piecesOf([80, 70]), stock);
    expect(cost).toBe(75_00);
    expect(totals.bought).toBe(300);
  });

  it('names every home run that is longer than the longest coil', () => {
    const pieces = [...piecesOf([90, 310, 400]), { id: 'riser', length: 700, spliceable: true }];
    expect(packPieces(pieces, sticksOf(100, 300))).toEqual({
      ok: false,
      tooLong: [
        { id: 'R2', piece: 1, length: 310, longestStock: 300 },
        { id: 'R3', piece: 2, length: 400, longestStock: 300 },
      ],
    });
  });

  it('packs nothing into nothing', () => {
    expect(packed([], sticksOf(20))).toMatchObject({
      sticks: [],
      cost: 0,
      bound: 0,
      gap: 0,
      provedLeast: true,
    });
  });
});

describe('using up off-cuts', () => {
  // Ten runs of 14 ft are 140 ft, seven sticks of 20 ft; but no two fit on one, so that it takes ten without couplings.
  it('saves sticks with couplings where it is allowed', () => {
    const pieces = piecesOf(Array(10).fill(14), true);
    expect(packed(pieces, sticksOf(20)).totals).toMatchObject({ bought: 200, couplings: 0 });
    const joined = packed(pieces, sticksOf(20), { joinOffCuts: true });
    expect(joined.totals).toMatchObject({ bought: 140, offCuts: 0 });
    expect(joined.provedLeast).toBe(true);
    expect(joined.totals.couplings).toBeGreaterThan(0);
  });

  it('never cuts what may not be spliced, and never shorter than a part may be', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ length: fc.integer({ min: 1, max: 240 }), spliceable: fc.boolean() }), {
          minLength: 1,
          maxLength: 40,
        }),
        fc.constantFrom([240], [120, 240], [144, 240]),
        fc.integer({ min: 0, max: 2 }),
        (drawn, lengths, perCut) => {
          const pieces = drawn.map((one, at) => ({ id: `R${at}`, ...one }));
          const plain = packed(pieces, sticksOf(...lengths), { perCut });
          const joined = packed(pieces, sticksOf(...lengths), {
            perCut,
            joinOffCuts: true,
            shortestPart: 24,
          });
          expect(joined.cost).toBeLessThanOrEqual(plain.cost);
          for (const { cuts } of joined.sticks)
            for (const { length, parts } of cuts) if (parts > 1) expect(length).toBeGreaterThanOrEqual(24);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a short list', () => {
  it('costs what plain enumeration finds least', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 6 }),
        fc.uniqueArray(fc.integer({ min: 10, max: 60 }), { minLength: 0, maxLength: 2 }),
        fc.integer({ min: 0, max: 3 }),
        fc.boolean(),
        (lengths, shorter, perCut, priced) => {
          const stock = [...new Set([...shorter, 41])].map((length, at): StockLength => {
            const one = { length, form: 'stick' } as const;
            return priced ? { ...one, price: 7 * length + 20 * at + 1 } : one;
          });
          const { cost, provedLeast } = packed(piecesOf(lengths), stock, { perCut });
          expect(cost).toBe(leastByEnumeration(lengths, stock, perCut));
          expect(provedLeast).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('a long list', () => {
  it.each([
    { stock: [240], least: 12, span: 228, count: 500 },
    { stock: [120, 240], least: 12, span: 500, count: 500 },
    { stock: [240], least: 48, span: 72, count: 500 },
    { stock: [1200, 3600, 6000], least: 180, span: 900, count: 500 },
  ])('of $count pieces on $stock is sound, and within 3 % of its bound', ({ stock, least, span, count }) => {
    const draw = drawFrom(77);
    const pieces = piecesOf(
      Array.from({ length: count }, () => least + draw(span)),
      true,
    );
    expect(packed(pieces, sticksOf(...stock)).gap).toBeLessThan(0.03);
    expect(packed(pieces, sticksOf(...stock), { perCut: 1 }).gap).toBeLessThan(0.03);
  });

  it('cut from sticks without waste has those sticks for its bound, and is packed near it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 1, max: 239 }), { minLength: 1, maxLength: 4 }), {
          minLength: 8,
          maxLength: 60,
        }),
        (sticks) => {
          const lengths = sticks.flatMap((marks) => {
            const edges = [0, ...new Set([...marks].sort((one, other) => one - other)), 240];
            return edges.slice(1).map((edge, at) => edge - edges[at]!);
          });
          const { bound, cost } = packed(piecesOf(lengths), sticksOf(240));
          expect(bound).toBe(240 * sticks.length);
          // One stick in ten too many, or part of ten.
          expect(cost).toBeLessThanOrEqual(bound + 240 * Math.ceil(sticks.length / 10));
        },
      ),
      { numRuns: 25 },
    );
  });

  it('is packed the same way each time', () => {
    const draw = drawFrom(5);
    const pieces = piecesOf(Array.from({ length: 80 }, () => 48 + draw(72)));
    expect(packed(pieces, sticksOf(240))).toEqual(packed(pieces, sticksOf(240)));
  });
});

describe('a wrong list', () => {
  it.each([
    [[{ id: 'R1', length: 1.5, spliceable: false }], sticksOf(20), {}, 'pieces[0].length is 1.5 for run R1'],
    [[{ id: 'R1', length: 0, spliceable: true }], sticksOf(20), {}, 'pieces[0].length is 0 for run R1'],
    [[], [], {}, 'stock is empty'],
    [[], sticksOf(-20), {}, 'stock[0].length is -20'],
    [[], [...sticksOf(10), { length: 20, form: 'stick' as const, price: 5 }], {}, 'prices in part'],
    [[], [{ length: 20, form: 'stick' as const, price: 0.5 }], {}, 'stock[0].price is 0.5'],
    [[], sticksOf(20), { perCut: -1 }, 'perCut is -1'],
    [[], sticksOf(20), { shortestPart: 0 }, 'shortestPart is 0'],
  ])('%j on %j with %j is refused', (pieces, stock, options, message) => {
    expect(() => packPieces(pieces, stock, options)).toThrow(message);
  });
});
