import { describe, expect, it } from 'vitest';
import { usualStock } from '../../../engine/takeoff/cut-stock-lengths.ts';
import { fromCutUnits, toCutUnits } from '../../../engine/takeoff/cut-stock-unit.ts';
import { pipeDimensions } from '../../../tables/pipe/dimensions.ts';
import { type MaterialId, materials } from '../../../tables/pipe/names.ts';

const foot = 0.3048;
const feet = (material: MaterialId, size: string, form?: 'stick' | 'coil'): number[] =>
  usualStock(material, size, form).map(
    ({ length }) => Math.round((fromCutUnits(length) / foot) * 1000) / 1000,
  );

describe('usual stock', () => {
  it('has the coils of type L that the data sheet prints for each size', () => {
    expect(feet('copper-l', '1', 'coil')).toEqual([60, 100]);
    expect(feet('copper-l', '1-1/2', 'coil')).toEqual([60]);
    expect(feet('copper-l', '2', 'coil')).toEqual([40, 45]);
    expect(feet('copper-l', '2-1/2', 'coil')).toEqual([]);
  });

  it('has sticks and coils, or only one of the two', () => {
    expect(feet('copper-k', '3/4')).toEqual([12, 20, 40, 60]);
    expect(feet('copper-k', '3/4', 'stick')).toEqual([12, 20]);
    expect(feet('galvanized', '1')).toEqual([21]);
  });

  it('has something for every size of every material, and nothing for a size that is not made', () => {
    for (const material of Object.keys(materials) as MaterialId[]) {
      for (const size of Object.keys(pipeDimensions[material].rows))
        expect(feet(material, size).length, `${material} ${size}`).toBeGreaterThan(0);
      expect(feet(material, '9')).toEqual([]);
    }
  });
});

describe('cut units', () => {
  it('are whole for sixteenths of an inch and tenths of a millimetre', () => {
    expect(toCutUnits(0.0254 / 16)).toBe(127);
    expect(toCutUnits(0.0001)).toBe(8);
    expect(toCutUnits(20 * foot)).toBe(20 * 12 * 16 * 127);
    expect(toCutUnits(0.1 * 3)).toBe(24_000);
  });
});
