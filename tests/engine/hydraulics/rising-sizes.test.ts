import { expect, it } from 'vitest';
import { largerSizes, risingSizes } from '../../../engine/hydraulics/rising-sizes.ts';

const rows = { '2': 0, '1': 0, '1-1/4': 0, '1/2': 0, '5/8': 0, '3/4': 0 };

it('puts sizes in the order of their inches', () => {
  expect(risingSizes(rows)).toEqual(['1/2', '5/8', '3/4', '1', '1-1/4', '2']);
});

it('offers larger sizes that are usually in stock, the nearest first', () => {
  expect(largerSizes(rows, '1/2')).toEqual(['3/4', '1', '1-1/4', '2']);
  expect(largerSizes(rows, '2')).toEqual([]);
});
