import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { risingSizes } from '../../engine/hydraulics/rising-sizes.ts';
import type { Device } from '../../engine/job/job.ts';
import { backflowWords, deviceWords, heaterWords } from '../../engine/job/words.ts';
import { devicePrice, indexPrices, unitPrice } from '../../engine/takeoff/index-prices.ts';
import { priceScheme } from '../../engine/takeoff/price-scheme.ts';
import { readPrices } from '../../server/document/read-prices.ts';
import { writePrices } from '../../server/document/write-prices.ts';
import { arresterSizes } from '../../tables/devices/arresters.ts';
import { manifoldCv } from '../../tables/devices/curves.ts';
import { meterLosses } from '../../tables/devices/meters.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { fittings, jointsOf, materials } from '../../tables/pipe/names.ts';
import { seldomStocked } from '../../tables/pipe/nominal-size.ts';
import { keysOf } from '../arbitrary/run.ts';
import { exampleNames, openExample } from './open-example.ts';

const folder = join(import.meta.dirname, '..', '..', 'examples', 'prices');
const text = readFileSync(join(folder, 'invented-2026.json'), 'utf8');
const read = await readPrices(text);
if (!read.ok) throw new Error(read.problems.join('; '));
const { book } = read;
const index = indexPrices(book);

describe('the price book that ships', () => {
  it('is the only one, and is no example job', () => {
    expect(readdirSync(folder)).toEqual(['invented-2026.json']);
    expect(exampleNames.filter((name) => /prices|invented/.test(name))).toEqual([]);
  });

  it('says that it is invented, wherever it is quoted from', () => {
    expect(book.invented).toBe(true);
    for (const words of [book.name, book.source, book.note]) expect(words).toMatch(/invented/i);
  });

  it('is written as it was read', () => {
    expect(writePrices(book)).toBe(text);
  });

  /** Its other metric series are told as missing wherever they are priced. */
  const unpriced: readonly string[] = ['pe-x-s5', 'copper-thin', 'multilayer'];
  const priced = keysOf(materials).filter((material) => !unpriced.includes(material));

  it('has no price for the metric series that no example is piped in', () => {
    const listed = new Set(book.pipe.map(({ material }) => material));
    expect(keysOf(materials).filter((material) => !listed.has(material))).toEqual(unpriced);
  });

  it.each(priced)('prices every size of %s and every fitting of its joints', (material) => {
    const missing: string[] = [];
    for (const size of risingSizes(pipeDimensions[material].rows)) {
      if (unitPrice(index, { item: 'pipe', material, size }) === undefined) missing.push(size);
      for (const joint of jointsOf[material]) {
        for (const kind of keysOf(fittings)) {
          const found = unitPrice(index, { item: 'fitting', material, joint, kind, size });
          if (found === undefined) missing.push(`${size} ${joint} ${kind}`);
        }
      }
    }
    expect(missing).toEqual([]);
  });

  it('prices every device in every size and type of the tables', () => {
    const pressure = { typed: '60 psi', si: 413_685 };
    const devices: Device[] = [
      ...keysOf(meterLosses).map((size) => ({ device: 'meter', size }) as const),
      ...keysOf(backflowWords).map((type) => ({ device: 'backflow', type }) as const),
      ...keysOf(heaterWords).map((type) => ({ device: 'heater', type }) as const),
      ...keysOf(arresterSizes.rows).map((size) => ({ device: 'arrester', size }) as const),
      ...keysOf(manifoldCv.rows).flatMap((size) =>
        [false, true].map((valved) => ({ device: 'manifold', size, ports: 4, valved }) as const),
      ),
      { device: 'reducing-valve', set: pressure },
      { device: 'softener' },
      { device: 'filter' },
      { device: 'mixing-valve' },
      { device: 'expansion-tank' },
      { device: 'other', name: 'anything', curve: [] },
    ];
    expect(new Set(devices.map(({ device }) => device))).toEqual(new Set(keysOf(deviceWords)));
    expect(devices.filter((device) => devicePrice(index, device) === undefined)).toEqual([]);
  });

  it('asks more for a larger size, of those in stock', () => {
    for (const material of priced) {
      const stocked = risingSizes(pipeDimensions[material].rows).filter((size) => !seldomStocked.has(size));
      const prices = stocked.map((size) =>
        unitPrice(index, { item: 'pipe', material, size })!.money.toNumber(),
      );
      for (let at = 1; at < prices.length; at++) {
        expect(prices[at], `${material} ${stocked[at]}`).toBeGreaterThan(prices[at - 1]!);
      }
    }
  });

  it('gives the two legs of a tee half the tee each', () => {
    for (const { kind, ...leg } of book.fittings) {
      if (kind !== 'tee-run') continue;
      expect(book.fittings).toContainEqual({ ...leg, kind: 'tee-branch' });
    }
  });

  it.each(exampleNames)('prices all of %s', async (name) => {
    for (const scheme of (await openExample(name)).schemes) {
      const { total, missing, priced } = priceScheme(index, scheme);
      expect(missing).toEqual([]);
      const exact = priced.pipe.plus(priced.fittings).plus(priced.devices);
      const most = 0.005 * scheme.runs.length * 2;
      expect(Math.abs(total!.money.minus(exact).toNumber())).toBeLessThanOrEqual(most);
    }
  });
});
