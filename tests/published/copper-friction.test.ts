import { describe, expect, it } from 'vitest';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';
import { boreOf, hazenWilliamsPsi } from './gradients.ts';

describe('copper types K and L, tables of an irrigation tutorial page (read 2026)', () => {
  /**
   * C is not stated; 140 fits these columns. The others (K 1/2 to 1, L 1/2) were made with smaller bores than ASTM B88
   * has: disagreements.test.ts.
   */
  const columns = new Set(['k 1-1/4', 'l 3/4', 'l 1', 'l 1-1/4']);
  const rows = readData('copper-k-and-l.csv').filter((row) =>
    columns.has(`${wordIn(row, 'type')} ${wordIn(row, 'size')}`),
  );

  it('has 36 points', () => expect(rows).toHaveLength(36));

  /** Half of the last digit (0.01 psi), and half a percent, by which printings of Hazen-Williams differ. */
  it.each(rows)('type $type $size in, $gpm gpm: $psi_per_100ft psi per 100 ft', (row) => {
    const printed = numberIn(row, 'psi_per_100ft');
    const material = `copper-${wordIn(row, 'type')}` as MaterialId;
    const computed = hazenWilliamsPsi(boreOf(material, wordIn(row, 'size')), numberIn(row, 'gpm'), 140);
    expectPrinted(computed, printed, 0.005 + 0.005 * printed);
  });
});

describe('copper type M, a home-building advice page (read 2026)', () => {
  /** C is not stated; 130 fits. 1 %: the page prints three digits of head, and printings of the law differ. */
  it.each(readData('copper-m.csv'))('$size in, $gpm gpm: $psi_per_100ft psi per 100 ft', (row) => {
    const printed = numberIn(row, 'psi_per_100ft');
    const computed = hazenWilliamsPsi(boreOf('copper-m', wordIn(row, 'size')), numberIn(row, 'gpm'), 130);
    expectPrinted(computed, printed, 0.002 + 0.01 * printed);
  });
});
