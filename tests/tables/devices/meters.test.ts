import { describe, expect, it } from 'vitest';
import { meterLimits, meterLosses } from '../../../tables/devices/meters.ts';
import { cell, readCsv } from '../second-reading/read-csv.ts';

const sizes = ['5/8', '3/4', '1', '1-1/2', '2', '3', '4'];

describe('meters', () => {
  it('stand in the seven sizes of the sheet', () => {
    expect(Object.keys(meterLosses).sort()).toEqual([...sizes].sort());
    expect(Object.keys(meterLimits.rows).sort()).toEqual([...sizes].sort());
  });

  it.each(sizes)('agree with a second reading in every cell: %s in', (size) => {
    const read = readCsv('meter-loss.csv').flatMap((row) => {
      const loss = cell(row, `loss_${size}`);
      return loss === undefined ? [] : [[cell(row, 'gpm')!, loss]];
    });
    expect(read.length).toBeGreaterThanOrEqual(20);
    expect(meterLosses[size]!.points).toEqual(read);
  });

  it('were read in a sheet about the standard, which is no other code', () => {
    expect(meterLimits.verified).toBe('seen-secondary');
  });

  it.each(sizes)('end at the safe maximum: %s in', (size) => {
    expect(meterLosses[size]!.points.at(-1)![0]).toBe(meterLimits.rows[size]!.values.safeMaximum);
  });

  /** A misplaced column would break the square law that displacement meters follow. */
  it.each(sizes)('follow the square law from the last point in the upper half: %s in', (size) => {
    const points = meterLosses[size]!.points;
    const [most, at] = points.at(-1)!;
    for (const [flow, loss] of points.filter(([x]) => x >= 0.6 * most)) {
      expect(Math.abs(loss / (at * (flow / most) ** 2) - 1), `${flow} gpm`).toBeLessThan(0.07);
    }
  });
});
