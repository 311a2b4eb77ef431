import { describe, expect, it } from 'vitest';
import { nominalInches } from '../../../engine/hydraulics/nominal-inches.ts';
import { pipeDimensions } from '../../../tables/pipe/dimensions.ts';
import { type MaterialId, materials } from '../../../tables/pipe/names.ts';
import { pressureRatings } from '../../../tables/pipe/ratings.ts';

const ids = Object.keys(materials) as MaterialId[];
const points = (material: MaterialId, at = 0) =>
  Object.fromEntries(pressureRatings[material][at]!.curve.points);

describe('pressure ratings', () => {
  it.each(ids)('reach every size of %s, in rising order', (material) => {
    const reach = pressureRatings[material].map(({ sizesUpTo }) => sizesUpTo);
    expect(reach).toEqual([...reach].sort((a, b) => a - b));
    const largest = Math.max(...Object.keys(pipeDimensions[material].rows).map(nominalInches));
    expect(reach.at(-1)).toBeGreaterThanOrEqual(largest);
  });

  it('agree with a second reading: PEX 160 psi at 73 F, 100 at 180 F, 80 at 200 F', () => {
    expect(points('pex')).toEqual({ 73: 160, 180: 100, 200: 80 });
  });

  it('agree with a second reading: CPVC 400 psi at 73 F and its factors by temperature', () => {
    const factors = { 120: 0.65, 130: 0.57, 140: 0.5, 160: 0.4, 180: 0.25 };
    for (const [fahrenheit, factor] of Object.entries(factors)) {
      expect(points('cpvc')[fahrenheit], fahrenheit).toBeCloseTo(400 * factor, 6);
    }
  });

  it('agree with a second reading: 95-5 solder at 100, 150 and 200 F, to 1 in and from 1-1/4 to 2 in', () => {
    expect(points('copper-l', 0)).toMatchObject({ 100: 500, 150: 400, 200: 300 });
    expect(points('copper-l', 1)).toMatchObject({ 100: 400, 150: 350, 200: 250 });
  });

  it('agree with a second reading: PE4710 SDR 9 at 250 psi', () => {
    expect(points('pe')).toEqual({ 73: 250, 100: 250 * 0.8 });
  });

  it('have threaded fittings of class 150 lose pressure above 150 F', () => {
    expect(points('galvanized')).toEqual({ 150: 300, 200: 265 });
  });

  it('hold the annealed tube of the note below the joint only from 1-1/2 in up', () => {
    // Type L at 150 F by the rating sheet, beside the joint of its size.
    expect(373).toBeGreaterThan(points('copper-l', 1)[150]!);
    expect(347).toBeLessThan(points('copper-l', 1)[150]!);
  });

  /** PVC: rating at 73 F times the factor of the temperature. */
  it('follow the factors of PVC in each group of sizes', () => {
    const factors = { 80: 0.88, 90: 0.75, 100: 0.62, 110: 0.51, 120: 0.4, 130: 0.31, 140: 0.22 };
    for (const at of [0, 1, 2]) {
      const group = points('pvc', at);
      expect(Object.keys(group).map(Number)).toEqual([73, 80, 90, 100, 110, 120, 130, 140]);
      for (const [fahrenheit, factor] of Object.entries(factors)) {
        expect(group[fahrenheit], `${at}, ${fahrenheit}`).toBeCloseTo(group[73]! * factor, 6);
      }
    }
  });
});
