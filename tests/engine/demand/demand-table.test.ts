import { describe, expect, it } from 'vitest';
import { demandColumnOf, flowOfUnits, rowAtOrAbove } from '../../../engine/demand/demand-table.ts';
import { demandTank, demandValve } from '../../../tables/ipc-2018/demand.ts';
import { fromSI } from '../../../tables/units/definitions.ts';

const tank = demandColumnOf(demandTank);
const gpmOf = (units: number, roundUp = false): number => fromSI(flowOfUnits(tank, units, roundUp), 'gpm');

describe('rowAtOrAbove', () => {
  it.each([
    [0, 0],
    [0.7, 0],
    [1, 0],
    [1.0001, 1],
    [2, 1],
    [20, 19],
    [20.5, 20],
    [25, 20],
  ])('%f units: row %d', (units, row) => expect(rowAtOrAbove(tank, units)).toBe(row));

  it('finds for every printed row that row, and for a hair more the next', () => {
    for (const column of [tank, demandColumnOf(demandValve)]) {
      column.units.forEach((units, row) => {
        expect(rowAtOrAbove(column, units)).toBe(row);
        expect(rowAtOrAbove(column, units + 1e-6)).toBe(row + 1);
      });
    }
  });

  it('is the number of rows beyond the last', () => expect(rowAtOrAbove(tank, 5001)).toBe(tank.units.length));
});

describe('flowOfUnits', () => {
  it('is nothing below the first row', () => {
    expect(gpmOf(0.7)).toBe(0);
    expect(gpmOf(0.7, true)).toBe(0);
    expect(flowOfUnits(demandColumnOf(demandValve), 4.9, true)).toBe(0);
  });

  it('is the row’s own at a row', () => expect(gpmOf(10)).toBeCloseTo(14.6, 9));

  /** 19.6 + (21.5 - 19.6) x 2/5. */
  it('is on a straight line between rows', () => expect(gpmOf(22)).toBeCloseTo(20.36, 9));

  it('or the next row up', () => expect(gpmOf(22, true)).toBeCloseTo(21.5, 9));

  /** 593 + (593 - 525) x 500/1000. */
  it('goes on with the last step beyond the table', () => {
    expect(gpmOf(5500)).toBeCloseTo(627, 9);
    expect(gpmOf(5500, true)).toBeCloseTo(627, 9);
  });
});
