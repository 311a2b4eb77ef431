import { describe, expect, it } from 'vitest';
import { nominalInches } from '../../../engine/hydraulics/nominal-inches.ts';
import { pipeDimensions } from '../../../tables/pipe/dimensions.ts';
import { materials } from '../../../tables/pipe/names.ts';
import { insulatedFrom } from '../../../tables/supports/insulation.ts';
import { spacingRows, supportSpacing } from '../../../tables/supports/spacing.ts';
import { keysOf } from '../../arbitrary/run.ts';

describe('support spacing', () => {
  it('agrees with a second reading of the printed rows', () => {
    const printed = Object.entries(supportSpacing.rows).map(([row, { values }]) => [
      row,
      values.horizontal,
      values.vertical,
    ]);
    expect(printed).toEqual([
      ['copper-small', 6, 10],
      ['copper-large', 10, 10],
      ['pex-small', 2.67, 10],
      ['pex-large', 4, 10],
      ['cpvc-small', 3, 10],
      ['cpvc-large', 4, 10],
      ['pvc', 4, 10],
      ['steel', 12, 15],
    ]);
  });

  it('prints the same length in feet as in inches', () => {
    for (const { values } of Object.values(supportSpacing.rows)) {
      if (values.horizontalInches === undefined) continue;
      expect(Math.round((values.horizontalInches / 12) * 100) / 100).toBe(values.horizontal);
    }
    expect(supportSpacing.rows['pex-small'].values.horizontalInches).toBe(32);
  });

  it('has a row for every size of every material but service tube', () => {
    for (const material of keysOf(materials)) {
      const bare = keysOf(pipeDimensions[material].rows).filter(
        (size) => !spacingRows[material].some(({ sizesUpTo }) => nominalInches(size) <= sizesUpTo),
      );
      expect(bare.length === 0, material).toBe(material !== 'pe');
    }
  });

  it('is marked as recalled where the row was not read', () => {
    const recalled = Object.entries(supportSpacing.rows).filter(([, row]) => row.verified === 'memory');
    expect(recalled.map(([row]) => row)).toEqual(['pvc', 'steel']);
  });
});

describe('insulation of hot pipe', () => {
  it('begins at 3/4 in by both editions', () => {
    expect(Object.values(insulatedFrom).map(({ printed, unit }) => `${printed} ${unit}`)).toEqual([
      '0.75 in',
      '0.75 in',
    ]);
  });
});
