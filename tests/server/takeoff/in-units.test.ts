import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../../engine/index.ts';
import { indexPrices } from '../../../engine/takeoff/index-prices.ts';
import { priceTakeOff } from '../../../engine/takeoff/price-take-off.ts';
import { takeOff } from '../../../engine/takeoff/take-off-network.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { eachIn, lengthIn, quantityIn, quantityWords, unitIn } from '../../../server/takeoff/in-units.ts';
import { takeOffWorkbook } from '../../../server/takeoff/take-off-workbook.ts';
import { openExample } from '../../examples/open-example.ts';

const ten = new Decimal(10);

describe('a take-off in the reader’s units', () => {
  it('leaves counts, and feet in a job in US units, as they are', () => {
    expect(quantityIn(ten, 'each', 'si').toNumber()).toBe(10);
    expect(quantityIn(ten, 'ft', 'us').toNumber()).toBe(10);
    expect(quantityWords(ten, 'each', 'si')).toBe('10');
    expect(quantityWords(ten, 'ft', 'us')).toBe('10 ft');
  });

  /** 10 ft = 3.048 m; 0.92 a foot = 0.92 / 0.3048 = 3.01837 a metre. */
  it('gives metres, and the price of a metre, in a job in SI', () => {
    expect(quantityIn(ten, 'ft', 'si').toNumber()).toBe(3.048);
    expect(unitIn('ft', 'si')).toBe('m');
    expect(eachIn(new Decimal('0.92'), 'ft', 'si').toNumber()).toBe(3.0184);
    expect(quantityWords(ten, 'ft', 'si')).toBe('3 m');
    expect(lengthIn(1, 'us')).toBe(3.281);
    expect(lengthIn(1, 'si')).toBe(1);
  });

  it('names metres and no feet in the workbook of a job in SI', async () => {
    const job = { ...(await openExample('three-level-house.json')), units: 'si' as const };
    const built = buildNetwork(job);
    if (!built.ok) throw new Error('no tree');
    const taken = takeOff(built.network);
    const { book } = await shippedPrices();
    const priced = priceTakeOff(taken, indexPrices(book));
    const sheets = takeOffWorkbook(job, { taken, priced }, book, { plan: 'coupled' });
    const heads = sheets.flatMap(({ head = [] }) => head).join(' ');
    expect(heads).toContain('length m');
    expect(heads).not.toMatch(/\bft\b/);
    const lines = sheets.find(({ name }) => name === 'Take-off')!.rows;
    expect(lines.filter((row) => row.includes('ft'))).toEqual([]);
    expect(lines.filter((row) => row.includes('m')).length).toBeGreaterThan(0);
  });
});
