import type { PriceBook } from '../../../engine/takeoff/price-book.ts';

/** A few prices that are easy to add up by hand. */
export const smallBook: PriceBook = {
  format: 'hightap-prices',
  version: 1,
  name: 'A few prices',
  invented: true,
  currency: 'USD',
  effective: '2026-01-01',
  source: 'Invented for the tests',
  pipe: [
    { material: 'pex', size: '1/2', perFoot: '0.1', hoursPerFoot: 0.02 },
    { material: 'pex', size: '3/4', perFoot: '0.85', hoursPerFoot: 0.03 },
    { material: 'copper-l', size: '3/4', perFoot: '4.3333', hoursPerFoot: 0.05 },
  ],
  fittings: [
    { material: 'pex', joint: 'insert-brass', kind: 'ell', size: '1/2', each: '0.2', hours: 0.1 },
    { material: 'pex', joint: 'insert-brass', kind: 'ell', size: '3/4', each: '2.10', hours: 0.125 },
    { material: 'pex', joint: 'expansion', kind: 'ell', size: '3/4', each: '3.00', hours: 0.25 },
    { material: 'pex', joint: 'insert-brass', kind: 'ball-valve', size: '3/4', each: '14.255', hours: 0.5 },
    { material: 'copper-l', joint: 'solder', kind: 'tee-branch', size: '3/4', each: '1.0001', hours: 0.25 },
  ],
  devices: [
    { device: 'meter', size: '1', each: '148.00', hours: 1 },
    { device: 'heater', each: '700.00', hours: 4 },
    { device: 'heater', size: 'tankless', each: '1200.005', hours: 6 },
    {
      device: 'manifold',
      size: '1',
      valved: true,
      each: '34.00',
      perPort: '14.50',
      hours: 0.5,
      hoursPerPort: 0.125,
    },
  ],
};
