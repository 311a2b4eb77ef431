import { expect, it } from 'vitest';
import { Exact, toCents } from '../../../engine/takeoff/money.ts';

it.each([
  ['0', 0],
  ['0.0049', 0],
  ['0.005', 1],
  ['1.005', 101],
  ['2.675', 268],
  ['10.0249999999', 1002],
  ['99999999.995', 10_000_000_000],
])('%s is %d cents', (money, cents) => {
  expect(toCents(new Exact(money))).toBe(cents);
});

it('sums and multiplies without loss', () => {
  expect(new Exact('0.1').plus('0.2').toString()).toBe('0.3');
  // 9999999.9999 x 1000 = 9999999999.9, and 9999999.9999 x 0.000000001 = 0.0099999999999
  const product = new Exact('9999999.9999').times('1000.000000001').toFixed();
  expect(product).toBe('9999999999.9099999999999');
});
