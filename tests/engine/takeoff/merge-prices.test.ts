import { describe, expect, it } from 'vitest';
import { comparePrices, mergePrices, removePrice } from '../../../engine/takeoff/merge-prices.ts';
import {
  lineFigures,
  lineKey,
  lineName,
  lineUnit,
  type PriceLine,
  priceLines,
} from '../../../engine/takeoff/price-line.ts';
import { smallBook } from './small-book.ts';

const half: PriceLine = {
  list: 'pipe',
  price: { material: 'pex', size: '1/2', perFoot: '0.10', hoursPerFoot: 0.02 },
};
const dearer: PriceLine = {
  list: 'pipe',
  price: { material: 'pex', size: '3/4', perFoot: '0.90', hoursPerFoot: 0.03 },
};
const slower: PriceLine = {
  list: 'fittings',
  price: { material: 'pex', joint: 'expansion', kind: 'ell', size: '3/4', each: '3', hours: 0.3 },
};
const ports: PriceLine = {
  list: 'devices',
  price: {
    device: 'manifold',
    size: '1',
    valved: true,
    each: '34.00',
    perPort: '15.00',
    hours: 0.5,
    hoursPerPort: 0.125,
  },
};
const other: PriceLine = { list: 'devices', price: { device: 'other', size: 'Pump', each: '0', hours: 2 } };
const tee: PriceLine = {
  list: 'parts',
  price: { kind: 'tee', material: 'pex', sizes: ['1', '3/4', '1/2'], each: '6.5', hours: 0.2 },
};

describe('lines of prices', () => {
  it('are new, changed or the same as those of a book', () => {
    const changes = comparePrices(smallBook, [half, dearer, slower, ports, other, tee]);
    expect(changes.added).toEqual([other, tee]);
    expect(changes.changed.map(({ after }) => after)).toEqual([dearer, slower, ports]);
    expect(lineFigures(changes.changed[0]!.before)).toEqual({ money: '0.85', hours: 0.03 });
    expect(changes.unchanged).toBe(1);
    // Twelve prices in the book, four of them named.
    expect(changes.untouched).toBe(8);
  });

  it('replace a price where it stands, and go to the end where there is none', () => {
    const merged = mergePrices(smallBook, [dearer, other, tee]);
    expect(merged.pipe.map(({ perFoot }) => perFoot)).toEqual(['0.1', '0.90', '4.3333']);
    expect(merged.devices.at(-1)).toEqual(other.price);
    expect(merged.parts).toEqual([tee.price]);
    expect(merged.fittings).toEqual(smallBook.fittings);
    expect(merged.name).toBe(smallBook.name);
    expect('parts' in mergePrices(smallBook, [dearer])).toBe(false);
  });

  it('are taken out of a book one by one', () => {
    const without = removePrice(smallBook, lineKey(dearer));
    expect(without.pipe.map(({ size }) => size)).toEqual(['1/2', '3/4']);
    expect(priceLines(without)).toHaveLength(priceLines(smallBook).length - 1);
  });

  it('are named, with the unit in which they are priced', () => {
    expect(lineName(half)).toBe('1/2 PEX SDR-9 pipe');
    expect(lineName(slower)).toBe('3/4 90° ell, PEX SDR-9 with cold-expansion fittings');
    expect(lineName(ports)).toBe('manifold 1 with a valve at each port');
    expect(lineName(tee)).toBe('1 x 3/4 x 1/2 tee, PEX SDR-9');
    expect([half, slower, tee].map(lineUnit)).toEqual(['ft', 'each', 'each']);
    expect(lineUnit({ list: 'parts', price: { kind: 'insulation', each: '1', hours: 0 } })).toBe('ft');
  });
});
