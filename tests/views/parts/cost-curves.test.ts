import { describe, expect, it } from 'vitest';
import { inSight, leastCostAt, stepsFrom, stepsUpTo } from '../../../views/parts/cost-curves.ts';

const spares = [
  { cents: 100, spare: -2 },
  { cents: 130, spare: 1 },
  { cents: 190, spare: 4 },
];

describe('a least cost as steps', () => {
  it('holds each cost up to the spare pressure that it leaves', () => {
    expect(stepsUpTo(spares, -10)).toEqual([
      { pressure: -10, cents: 100 },
      { pressure: -2, cents: 100 },
      { pressure: -2, cents: 130 },
      { pressure: 1, cents: 130 },
      { pressure: 1, cents: 190 },
      { pressure: 4, cents: 190 },
    ]);
  });

  it('holds each cost from the pressure that it asks on', () => {
    const needs = spares.map(({ cents, spare }) => ({ cents, need: 50 - spare }));
    expect(stepsFrom(needs, 60)).toEqual([
      { pressure: 46, cents: 190 },
      { pressure: 49, cents: 190 },
      { pressure: 49, cents: 130 },
      { pressure: 52, cents: 130 },
      { pressure: 52, cents: 100 },
      { pressure: 60, cents: 100 },
    ]);
  });

  it('is read off at the first point that leaves enough, and nowhere beyond the last', () => {
    expect([-5, -2, -1.9, 1, 2, 4, 4.1].map((spare) => leastCostAt(spares, spare))).toEqual([
      100,
      100,
      130,
      130,
      190,
      190,
      undefined,
    ]);
  });

  it('is cut where it leaves the sheet, at the cost that it has there', () => {
    const steps = stepsUpTo(spares, -10);
    expect(inSight(steps, { least: -1, most: 2 })).toEqual([
      { pressure: -1, cents: 130 },
      { pressure: 1, cents: 130 },
      { pressure: 1, cents: 190 },
      { pressure: 2, cents: 190 },
    ]);
    expect(inSight(steps, { least: 2, most: 3 })).toEqual([
      { pressure: 2, cents: 190 },
      { pressure: 3, cents: 190 },
    ]);
    expect(inSight(steps, { least: 5, most: 9 })).toEqual([]);
  });
});
