import { expect, it } from 'vitest';
import type { Device } from '../../../engine/job/job.ts';
import { itemOfDevice, type PriceItem, priceKey, priceName } from '../../../engine/takeoff/price-item.ts';

const ell = { item: 'fitting', material: 'pex', joint: 'insert-brass', kind: 'ell', size: '1/2' } as const;

it.each<[PriceItem, string]>([
  [{ item: 'pipe', material: 'pex', size: '3/4' }, '3/4 PEX SDR-9 pipe'],
  [ell, '1/2 90° ell, PEX SDR-9 with brass insert fittings'],
  [{ item: 'device', device: 'meter', size: '1' }, 'meter 1'],
  [{ item: 'device', device: 'expansion-tank' }, 'expansion tank'],
  [{ item: 'device', device: 'manifold', size: '1', valved: true }, 'manifold 1 with a valve at each port'],
  [{ item: 'device', device: 'manifold', size: '1', valved: false }, 'manifold 1 without valves'],
])('names %j', (item, name) => {
  expect(priceName(item)).toBe(name);
});

it.each<[Device, PriceItem]>([
  [
    { device: 'meter', size: '3/4' },
    { item: 'device', device: 'meter', size: '3/4' },
  ],
  [
    { device: 'backflow', type: 'double-check' },
    { item: 'device', device: 'backflow', size: 'double-check' },
  ],
  [
    { device: 'arrester', size: 'A' },
    { item: 'device', device: 'arrester', size: 'A' },
  ],
  [
    { device: 'other', name: 'Coil', curve: [] },
    { item: 'device', device: 'other', size: 'Coil' },
  ],
  [
    { device: 'mixing-valve', cv: 3 },
    { item: 'device', device: 'mixing-valve' },
  ],
])('takes from %j what its price goes by', (device, item) => {
  expect(itemOfDevice(device)).toEqual(item);
});

it('tells items with different prices apart', () => {
  const items: PriceItem[] = [
    ell,
    { ...ell, size: '3/4' },
    { ...ell, kind: 'ell-45' },
    { ...ell, joint: 'expansion' },
    { ...ell, material: 'pe' },
    { item: 'device', device: 'manifold', size: '1', valved: true },
    { item: 'device', device: 'manifold', size: '1', valved: false },
    { item: 'device', device: 'other' },
    { item: 'device', device: 'other', size: 'true' },
  ];
  expect(new Set(items.map(priceKey)).size).toBe(items.length);
});
