import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexPrices } from '../../../engine/takeoff/index-prices.ts';
import { feetOf, type PricedRun, priceRun } from '../../../engine/takeoff/price-run.ts';
import { lengthText, quantity } from '../../arbitrary/quantity.ts';
import { smallBook } from './small-book.ts';

const index = indexPrices(smallBook);

function pex(length: string, fittings: PricedRun['fittings'] = []): PricedRun {
  return { material: 'pex', length: quantity(length, 'length'), fittings };
}

function priced(run: PricedRun, size: string) {
  const price = priceRun(index, run, size);
  if (!price.ok) throw new Error(JSON.stringify(price.missing));
  return price;
}

describe('feetOf', () => {
  it.each([
    ['12.5 ft', '12.5'],
    ['0.1 ft', '0.1'],
    ['18.3 ft', '18.3'],
    ['7 ft 6 in', '7.5'],
    ['5 in', '0.416666667'],
    // 1 m is 1 / 0.3048 ft.
    ['1 m', '3.280839895'],
    ['3.048 m', '10'],
  ])('%s is %s ft', (typed, feet) => {
    expect(feetOf(quantity(typed, 'length')).toString()).toBe(feet);
  });

  it('gives every whole thousandth of a foot back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_000_000 }), (thousandths) => {
        const typed = `${Math.floor(thousandths / 1000)}.${String(thousandths % 1000).padStart(3, '0')}`;
        expect(feetOf(quantity(`${typed} ft`, 'length')).toFixed(3)).toBe(typed);
        expect(feetOf(quantity(`${typed} ft`, 'length')).decimalPlaces()).toBeLessThanOrEqual(3);
      }),
    );
  });
});

describe('priceRun', () => {
  it('adds pipe by the foot and each fitting in the size', () => {
    // 18 x 0.85 + 2 x 2.10 + 1 x 14.255 = 15.30 + 4.20 + 14.255 = 33.755
    const run = pex('18 ft', [
      { kind: 'ell', count: 2 },
      { kind: 'ball-valve', count: 1 },
    ]);
    const price = priced(run, '3/4');
    expect(price.price.toString()).toBe('33.755');
    expect(price.cents).toBe(3376);
    // 18 x 0.03 + 2 x 0.125 + 0.5
    expect(price.hours).toBeCloseTo(1.29, 12);
  });

  it('adds decimals as decimals', () => {
    // 1 x 0.1 + 1 x 0.2, which in binary is 0.30000000000000004
    expect(priced(pex('1 ft', [{ kind: 'ell', count: 1 }]), '1/2').price.toString()).toBe('0.3');
    // 3 x 0.1, likewise
    expect(priced(pex('3 ft'), '1/2').price.toString()).toBe('0.3');
  });

  it('keeps every digit of a long price', () => {
    // 9000.123 x 4.3333 = 39000.2329959, + 999 x 1.0001 = 999.0999
    const run: PricedRun = {
      material: 'copper-l',
      length: quantity('9000.123 ft', 'length'),
      fittings: [{ kind: 'tee-branch', count: 999 }],
    };
    expect(priced(run, '3/4').price.toString()).toBe('39999.3328959');
    expect(priced(run, '3/4').cents).toBe(3_999_933);
  });

  it.each([
    // 12.5 x 0.85 = 10.625
    ['12.5 ft', '10.625', 1063],
    // 0.1 x 0.85 = 0.085
    ['0.1 ft', '0.085', 9],
    // 12.4 x 0.85 = 10.54
    ['12.4 ft', '10.54', 1054],
    // 12.499 x 0.85 = 10.62415
    ['12.499 ft', '10.62415', 1062],
    ['0 ft', '0', 0],
  ])('rounds once, half a cent going up: %s', (length, exact, cents) => {
    const price = priced(pex(length), '3/4');
    expect(price.price.toString()).toBe(exact);
    expect(price.cents).toBe(cents);
  });

  it('takes the run’s own joint, or the material’s usual one', () => {
    const ell = [{ kind: 'ell', count: 1 }] as const;
    expect(priced(pex('0 ft', ell), '3/4').price.toString()).toBe('2.1');
    expect(priced({ ...pex('0 ft', ell), joint: 'expansion' }, '3/4').price.toString()).toBe('3');
  });

  it('names every price that is missing, and takes none as zero', () => {
    const run = pex('10 ft', [
      { kind: 'ell', count: 1 },
      { kind: 'coupling', count: 2 },
    ]);
    const coupling = { item: 'fitting', material: 'pex', joint: 'insert-brass', kind: 'coupling' };
    expect(priceRun(index, run, '3/4')).toEqual({ ok: false, missing: [{ ...coupling, size: '3/4' }] });
    expect(priceRun(index, run, '1')).toEqual({
      ok: false,
      missing: [
        { item: 'pipe', material: 'pex', size: '1' },
        { ...coupling, kind: 'ell', size: '1' },
        { ...coupling, size: '1' },
      ],
    });
  });

  it('prices a run cut in two as the two pieces, to the last digit', () => {
    const feet = lengthText(0, 500).map((text) => feetOf(quantity(text, 'length')).toNumber());
    fc.assert(
      fc.property(feet, feet, fc.nat({ max: 50 }), fc.nat({ max: 50 }), (one, other, ells, more) => {
        const run = (length: string, count: number) => pex(`${length} ft`, [{ kind: 'ell', count }]);
        const thousandths = (length: number) => Math.round(length * 1000);
        const text = (whole: number) =>
          `${Math.floor(whole / 1000)}.${String(whole % 1000).padStart(3, '0')}`;
        const a = thousandths(one);
        const b = thousandths(other);
        const apart = priced(run(text(a), ells), '3/4').price.plus(priced(run(text(b), more), '3/4').price);
        expect(priced(run(text(a + b), ells + more), '3/4').price.toString()).toBe(apart.toString());
      }),
    );
  });
});
