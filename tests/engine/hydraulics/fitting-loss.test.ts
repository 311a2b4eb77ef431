import { describe, expect, it } from 'vitest';
import { fittingLoss } from '../../../engine/hydraulics/fitting-loss.ts';
import { toSI } from '../../../tables/units/definitions.ts';

describe('fittingLoss', () => {
  /** Manufacturer’s manual A (2016), page 21: 9.4 ft for a 3/4 in brass insert ell. */
  it('takes the length of the material’s own joint', () => {
    const { by, each } = fittingLoss('pex', 'insert-brass', '3/4', 'ell');
    expect(by).toBe('equivalent length');
    expect(each.value).toBeCloseTo(toSI(9.4, 'ft'), 12);
  });

  it('tells joints apart: 17.4 ft for the polymer ell', () => {
    expect(fittingLoss('pex', 'insert-polymer', '3/4', 'ell').each.printed).toBe(17.4);
  });

  /** The model code’s table leaves the straight run of a 1/2 in tee blank; Illinois Table Q prints 0.5 ft. */
  it('goes on to the next table where the first is blank', () => {
    const { by, each } = fittingLoss('copper-l', 'solder', '1/2', 'tee-run');
    expect(by).toBe('equivalent length');
    expect(each.printed).toBe(0.5);
    expect(each.table.id).toBe('illinois-wrought-lengths');
  });

  it('falls back to K where no table prints the size', () => {
    const { by, each } = fittingLoss('cpvc', 'solvent', '3/4', 'globe-valve');
    expect(by).toBe('K');
    expect(each.value).toBe(10);
  });
});
