import { describe, expect, it } from 'vitest';
import { demandColumnOf, flowOfUnits } from '../../engine/demand/demand-table.ts';
import { demandTank, demandValve } from '../../tables/ipc-2018/demand.ts';
import { demandTank as ircTank } from '../../tables/irc-2021/demand.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { expectPrinted } from './expect-printed.ts';

const tank = demandColumnOf(demandTank);
const valve = demandColumnOf(demandValve);
const gpmOf = (column: typeof tank, units: number, roundUp = false): number =>
  fromSI(flowOfUnits(column, units, roundUp), 'gpm');

/** Digits of the print: tenths of a gpm in the International codes, half gallons and gallons in the others. */
describe('fixture units to flow, flush tanks', () => {
  /** 77 Ill. Adm. Code 890, Table N, read in the code: the rows that the International curve shares. */
  it.each([
    [60, 32],
    [70, 35],
    [80, 38],
    [90, 41],
    [100, 43.5],
    [120, 48],
    [140, 52.5],
    [160, 57],
    [180, 61],
    [200, 65],
    [225, 70],
    [250, 75],
    [275, 80],
    [300, 85],
    [400, 105],
    [750, 170],
    [1000, 208],
  ])('Illinois, %d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(tank, units), printed, 0);
  });

  /** Rows of the same table that the International codes do not print: a straight line must meet them. Whole gallons. */
  it.each([
    [350, 95],
    [450, 115],
  ])('Illinois between our rows, %d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(tank, units), printed, 0.5);
    expectPrinted(fromSI(flowOfUnits(demandColumnOf(ircTank), units, false), 'gpm'), printed, 0.5);
  });

  /** National Standard Plumbing Code, Table B.5.4, read in the code: a curve of its own, within 2 gpm from 120 units. */
  it.each([
    [120, 49],
    [140, 53],
    [160, 57],
    [180, 61],
    [200, 65],
    [225, 70],
    [250, 75],
    [300, 85],
    [400, 105],
    [500, 125],
    [750, 170],
    [1000, 210],
  ])('National Standard, %d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(tank, units), printed, 2);
  });

  /** Engineering reference page that quotes the International table. */
  it.each([
    [1, 3],
    [2, 5],
    [4, 8],
    [8, 12.8],
    [15, 17.5],
    [30, 23.3],
    [50, 29.1],
  ])('reference page, %d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(tank, units), printed, 0);
  });
});

describe('fixture units to flow, flushometer valves', () => {
  /** The same reference page. */
  it.each([
    [5, 15],
    [7, 19.8],
    [10, 27],
    [15, 31],
    [20, 35],
    [30, 42],
    [50, 50],
  ])('reference page, %d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(valve, units), printed, 0);
  });

  it('meets the tank column at 1000 units, as both curves do in print', () => {
    expect(gpmOf(valve, 1000)).toBe(gpmOf(tank, 1000));
  });
});

describe('rounding up to the next row', () => {
  /**
   * Louisiana Administrative Code 51:XIV.1805, Table 1805.A (read): 288, 264 and 132 units. IPC Appendix E, the same
   * example (from memory): 24 and 12 units, read from the valve column although no flushometer is on hot water.
   */
  it.each([
    [288, 108],
    [264, 104.5],
    [132, 77],
    [24, 38],
    [12, 28.6],
  ])('%d units: %f gpm', (units, printed) => {
    expectPrinted(gpmOf(valve, units, true), printed, 0);
  });

  /** By a straight line, arithmetic on the printed rows: 104.5 + 3.5 x 13/25; 101 + 3.5 x 14/25; 73 + 4 x 12/20. */
  it.each([
    [288, 106.32],
    [264, 102.96],
    [132, 75.4],
  ])('%d units on a straight line: %f gpm', (units, written) => {
    expectPrinted(gpmOf(valve, units), written, 1e-9);
  });
});
