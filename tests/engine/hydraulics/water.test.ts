import { describe, expect, it } from 'vitest';
import { readCurve, rowsAround, waterAt } from '../../../engine/hydraulics/water.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { waterDensity } from '../../../tables/water/liquid-water.ts';

const celsius = (value: number): number => toSI(value, 'C');

describe('water', () => {
  it('is a row of the table at its temperature', () => {
    expect(waterAt(celsius(20)).density).toBeCloseTo(998.34267, 9);
    expect(waterAt(celsius(60)).viscosity).toBeCloseTo(0.00046611482, 15);
  });

  it('lies half way between two rows', () => {
    expect(waterAt(celsius(12.5)).density).toBeCloseTo((999.84419 + 999.2404) / 2, 6);
  });

  it('stays at the end rows outside of the table', () => {
    expect(waterAt(celsius(-10)).density).toBe(1000.0537);
    expect(waterAt(celsius(120)).density).toBe(962.03313);
  });
});

describe('rowsAround', () => {
  it('gives the rows and the share of the way', () => {
    const { below, above, share } = rowsAround(waterDensity, celsius(6));
    expect([waterDensity.points[below]![0], waterDensity.points[above]![0]]).toEqual([5, 10]);
    expect(share).toBeCloseTo(0.2, 9);
    expect(readCurve(waterDensity, celsius(6))).toBeCloseTo(1000.1137 + 0.2 * (999.84419 - 1000.1137), 6);
  });
});
