import { describe, expect, it } from 'vitest';
import type { Run } from '../../../engine/job/job.ts';
import { indexPrices } from '../../../engine/takeoff/index-prices.ts';
import { priceScheme } from '../../../engine/takeoff/price-scheme.ts';
import { quantity } from '../../arbitrary/quantity.ts';
import { smallBook } from './small-book.ts';

const index = indexPrices(smallBook);

function run(id: string, size: string, length: string, rest: Partial<Run> = {}): Run {
  return {
    id,
    from: 'street',
    size,
    material: 'pex',
    length: quantity(length, 'length'),
    fittings: [],
    ...rest,
  };
}

const manifold = { device: 'manifold', size: '1', ports: 6, valved: true } as const;
const runs: readonly Run[] = [
  run('S1', '3/4', '12.5 ft', { fittings: [{ kind: 'ell', count: 1 }], end: { device: 'meter', size: '1' } }),
  run('S2', '3/4', '0.1 ft', { fittings: [{ kind: 'ball-valve', count: 2 }], end: manifold }),
  run('H1', '1/2', '20 ft', {
    fittings: [{ kind: 'ell', count: 3 }],
    end: { fixture: 'LAV', inlet: 'cold' },
  }),
  run('C1', '3/4', '10 ft', { material: 'copper-l', fittings: [{ kind: 'tee-branch', count: 1 }] }),
];

describe('priceScheme', () => {
  it('adds up pipe, fittings, devices and hours', () => {
    const { priced, total, missing } = priceScheme(index, { runs });
    expect(missing).toEqual([]);
    // 12.5 x 0.85 + 0.1 x 0.85 + 20 x 0.1 + 10 x 4.3333 = 10.625 + 0.085 + 2 + 43.333
    expect(priced.pipe.toString()).toBe('56.043');
    // 2.10 + 2 x 14.255 + 3 x 0.2 + 1.0001 = 2.10 + 28.51 + 0.60 + 1.0001
    expect(priced.fittings.toString()).toBe('32.2101');
    // 148 + (34 + 6 x 14.50) = 148 + 121
    expect(priced.devices.toString()).toBe('269');
    // (12.5 + 0.1) x 0.03 + 0.125 + 2 x 0.5 + 20 x 0.02 + 3 x 0.1 + 10 x 0.05 + 0.25, + 1 + 0.5 + 6 x 0.125
    expect(priced.hours).toBeCloseTo(5.203, 12);
    // Runs: 12.725 -> 12.73, 28.595 -> 28.60, 2.60, 44.3331 -> 44.33: 88.26, with devices 357.26
    expect(total?.money.toString()).toBe('357.26');
    expect(total?.hours).toBe(priced.hours);
  });

  it('lists feet by material and size, and fittings by kind and size', () => {
    const { feet, fittings } = priceScheme(index, {
      runs: [...runs, run('S3', '3/4', '0.2 ft', { fittings: [{ kind: 'ell', count: 4 }] })],
    });
    expect(feet.map(({ material, size, feet }) => `${size} ${material} ${feet}`)).toEqual([
      '1/2 pex 20',
      '3/4 pex 12.8',
      '3/4 copper-l 10',
    ]);
    expect(fittings).toEqual([
      { material: 'pex', joint: 'insert-brass', kind: 'ell', size: '1/2', count: 3 },
      { material: 'pex', joint: 'insert-brass', kind: 'ell', size: '3/4', count: 5 },
      { material: 'pex', joint: 'insert-brass', kind: 'ball-valve', size: '3/4', count: 2 },
      { material: 'copper-l', joint: 'solder', kind: 'tee-branch', size: '3/4', count: 1 },
    ]);
  });

  it('lists a missing price once and gives no total', () => {
    const more = [
      ...runs,
      run('X1', '2', '5 ft'),
      run('X2', '2', '6 ft', { fittings: [{ kind: 'ell', count: 1 }], end: { device: 'softener' } }),
      run('X3', '1/2', '1 ft', { end: { ...manifold, valved: false } }),
    ];
    const { priced, total, missing, feet } = priceScheme(index, { runs: more });
    expect(missing).toEqual([
      { item: 'pipe', material: 'pex', size: '2' },
      { item: 'fitting', material: 'pex', joint: 'insert-brass', kind: 'ell', size: '2' },
      { item: 'device', device: 'softener' },
      { item: 'device', device: 'manifold', size: '1', valved: false },
    ]);
    expect(total).toBeUndefined();
    // What has a price is still added: 56.043 and the foot of 1/2 at 0.1.
    expect(priced.pipe.toString()).toBe('56.143');
    expect(feet.find(({ size }) => size === '2')?.feet.toString()).toBe('11');
  });

  it('is nothing for no runs', () => {
    const { priced, total, feet } = priceScheme(index, { runs: [] });
    expect([priced.pipe, priced.fittings, priced.devices, total?.money].map(String)).toEqual([
      '0',
      '0',
      '0',
      '0',
    ]);
    expect(feet).toEqual([]);
  });
});
