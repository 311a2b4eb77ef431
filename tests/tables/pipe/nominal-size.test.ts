import { expect, it } from 'vitest';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';

it('names say their inches: a whole number, a fraction, or both', () => {
  expect(Object.keys(nominalSizes)).toHaveLength(11);
  for (const [name, inches] of Object.entries(nominalSizes)) {
    const sum = name.split('-').reduce((total, part) => {
      const [over, under = '1'] = part.split('/');
      return total + Number(over) / Number(under);
    }, 0);
    expect(inches, name).toBe(sum);
  }
});
