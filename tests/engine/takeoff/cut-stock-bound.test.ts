import { describe, expect, it } from 'vitest';
import { packPieces } from '../../../engine/takeoff/cut-stock.ts';
import { costOf } from '../../../engine/takeoff/cut-stock-bin.ts';
import { coverBound, valueBound } from '../../../engine/takeoff/cut-stock-bound.ts';
import { fillByValue } from '../../../engine/takeoff/cut-stock-fill.ts';
import { packGreedily } from '../../../engine/takeoff/cut-stock-greedy.ts';
import { improve } from '../../../engine/takeoff/cut-stock-improve.ts';
import { loadsOf, roomsOf } from '../../../engine/takeoff/cut-stock-load.ts';
import type { StockLength } from '../../../engine/takeoff/cut-stock-model.ts';
import { type CutList, drawFrom, randomCutList } from './cut-stock-programme.ts';

/** The list in units a thousandth as long and of no round number, so that the bound has to round them. */
function inFineUnits({ pieces, stock, perCut }: CutList, seed: number): CutList {
  const draw = drawFrom(seed);
  return {
    pieces: pieces.map((piece) => ({ ...piece, length: piece.length * 1009 - draw(1009) })),
    stock: stock.map((one) => ({ ...one, length: one.length * 1009 })),
    perCut: perCut * 131,
  };
}

/** A random list that is short enough to be packed at a proved cost, and what serves long ones, run on it. */
function bothWays(seed: number) {
  const coarse = randomCutList(seed, 11);
  const { pieces, stock, perCut } = seed % 2 === 0 ? coarse : inFineUnits(coarse, seed);
  const exact = packPieces(pieces, stock, { perCut });
  if (!exact.ok) throw new Error(`list ${seed} has a piece that is too long`);
  const rooms = roomsOf(stock, perCut);
  const loads = loadsOf(pieces, rooms, perCut);
  const greedy = packGreedily(loads, rooms);
  return {
    least: exact.cost,
    cover: coverBound(loads, rooms),
    value: valueBound(loads, rooms),
    greedy: costOf(greedy),
    filled: costOf(fillByValue(loads, rooms, 0)),
    improved: costOf(improve(greedy, rooms, 0, 300)),
  };
}

const lists = Array.from({ length: 200 }, (_, at) => bothWays(5000 + at));
const share = (holds: (list: (typeof lists)[number]) => boolean): number =>
  lists.filter(holds).length / lists.length;

describe('what serves long lists, on 200 short ones whose least cost is proved', () => {
  it('never has a bound above it', () => {
    expect(lists.filter(({ least, cover, value }) => cover > least || value > least)).toEqual([]);
  });

  it('has a bound that is sharper for knowing which lengths can share a stick', () => {
    expect(share(({ cover, value }) => value > cover)).toBeGreaterThan(0.4);
    expect(share(({ least, cover, value }) => Math.max(cover, value) === least)).toBeGreaterThan(0.6);
  });

  it('never costs less, and mostly the same', () => {
    expect(
      lists.filter(({ least, greedy, filled, improved }) => Math.min(greedy, filled, improved) < least),
    ).toEqual([]);
    expect(share(({ least, improved }) => improved === least)).toBeGreaterThan(0.95);
  });
});

describe('the bounds by hand', () => {
  const stock: StockLength[] = [{ length: 20, form: 'stick' }];
  const boundsOf = (lengths: readonly number[]) => {
    const rooms = roomsOf(stock, 0);
    const loads = loadsOf(
      lengths.map((length, at) => ({ id: `R${at}`, length, spliceable: false })),
      rooms,
      0,
    );
    return [coverBound(loads, rooms), valueBound(loads, rooms)];
  };

  it('see 44 ft of pieces of 11 ft as three sticks by length, as four by what fits', () => {
    expect(boundsOf([11, 11, 11, 11])).toEqual([60, 80]);
  });

  it('see six pieces of 7 ft as three sticks, two on each', () => {
    expect(boundsOf([7, 7, 7, 7, 7, 7])).toEqual([60, 60]);
  });

  it('see nine pieces of 7 ft as five sticks, where the length would go on four', () => {
    expect(boundsOf(Array(9).fill(7))).toEqual([80, 100]);
  });
});
