import { toSI } from '../../tables/units/definitions.ts';
import type { CsvRow } from '../tables/second-reading/read-csv.ts';
import { numberIn, wordIn } from './data/read-data.ts';

/**
 * Bores that a table of flow and velocity implies, m, by size: from the row of its highest velocity, where the digits
 * of the print weigh least.
 */
export function statedBores(rows: readonly CsvRow[]): Map<string, number> {
  const fastest = new Map<string, CsvRow>();
  for (const row of rows) {
    const known = fastest.get(wordIn(row, 'size'));
    if (known === undefined || numberIn(known, 'ft_per_s') < numberIn(row, 'ft_per_s')) {
      fastest.set(wordIn(row, 'size'), row);
    }
  }
  return new Map(
    [...fastest].map(([size, row]) => {
      const area = toSI(numberIn(row, 'gpm'), 'gpm') / toSI(numberIn(row, 'ft_per_s'), 'ft/s');
      return [size, Math.sqrt((4 * area) / Math.PI)];
    }),
  );
}
