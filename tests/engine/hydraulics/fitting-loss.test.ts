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

  /** The threaded ell of the reference page, 1.5, in place of the code's 2 ft. */
  it('takes the K of the kind where the basis counts by loss coefficient', () => {
    const { by, each } = fittingLoss('copper-l', 'solder', '3/4', 'ell', 'loss-coefficient');
    expect(by).toBe('K');
    expect(each.value).toBe(1.5);
  });

  /** Insert fittings narrow the way: 3.8 for the 3/4 in brass ell. */
  it('takes the K of the joint where it has its own', () => {
    expect(fittingLoss('pex', 'insert-brass', '3/4', 'ell', 'loss-coefficient').each.value).toBe(3.8);
    expect(fittingLoss('pex', 'insert-brass', '3/4', 'ball-valve', 'loss-coefficient').each.value).toBe(0.1);
  });

  /** No lengths are on file for metric pipe; 25x3.5 has a bore between those of 3/4 and 1 in. */
  it('takes K for metric pipe, of the next smaller size', () => {
    expect(fittingLoss('pe-x', 'insert-brass', '25x3.5', 'ell')).toMatchObject({
      by: 'K',
      each: { value: 3.8 },
    });
    expect(fittingLoss('copper-en', 'solder', '15x1', 'ell').each.value).toBe(1.5);
  });
});
