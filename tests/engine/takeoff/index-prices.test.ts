import { describe, expect, it } from 'vitest';
import type { Device } from '../../../engine/job/job.ts';
import { devicePrice, indexPrices, unitPrice } from '../../../engine/takeoff/index-prices.ts';
import { smallBook } from './small-book.ts';

const index = indexPrices(smallBook);
const price = (device: Device) => devicePrice(index, device);

describe('devicePrice', () => {
  it('takes the price of the device’s own type, else that without one', () => {
    expect(price({ device: 'heater', type: 'tankless' })?.money.toString()).toBe('1200.005');
    expect(price({ device: 'heater', type: 'storage' })?.money.toString()).toBe('700');
  });

  it('adds a manifold’s ports to its body', () => {
    // 34 + 8 x 14.50 and 0.5 + 8 x 0.125
    const found = price({ device: 'manifold', size: '1', ports: 8, valved: true });
    expect(found?.money.toString()).toBe('150');
    expect(found?.hours).toBe(1.5);
  });

  it('finds none for another size or another kind of manifold', () => {
    expect(price({ device: 'meter', size: '3/4' })).toBeUndefined();
    expect(price({ device: 'manifold', size: '1', ports: 8, valved: false })).toBeUndefined();
    expect(price({ device: 'filter' })).toBeUndefined();
  });
});

it('unitPrice finds a price, or none', () => {
  const found = unitPrice(index, { item: 'pipe', material: 'copper-l', size: '3/4' });
  expect([found?.money.toString(), found?.hours]).toEqual(['4.3333', 0.05]);
  expect(unitPrice(index, { item: 'pipe', material: 'copper-m', size: '3/4' })).toBeUndefined();
});
