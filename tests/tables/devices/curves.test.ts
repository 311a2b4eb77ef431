import { describe, expect, it } from 'vitest';
import { curveOf, lossAt } from '../../../engine/hydraulics/curve.ts';
import { risingSizes } from '../../../engine/hydraulics/rising-sizes.ts';
import { arresterSizes } from '../../../tables/devices/arresters.ts';
import { deviceCurves, manifoldCv } from '../../../tables/devices/curves.ts';
import { backflowLoss, reducingValveFallOff } from '../../../tables/devices/sized-curves.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { cell, readCsv } from '../second-reading/read-csv.ts';

const every = Object.entries({
  ...deviceCurves,
  ...Object.fromEntries(
    [reducingValveFallOff, ...Object.values(backflowLoss)]
      .flatMap((bySize) => Object.values(bySize))
      .map((curve) => [curve.id, curve]),
  ),
});

describe('generic device curves', () => {
  it.each(every)('%s begins at no flow, is no print, and yields to the maker’s', (_, curve) => {
    expect(curve.points[0]![0]).toBe(0);
    expect(curve.verified).not.toBe('seen');
    expect(curve.note).toMatch(/A generic curve: the maker’s curve takes its place\.$/);
    expect([curve.x, curve.y]).toEqual(['gpm', 'psi']);
  });

  it('has the reduced-pressure assembly lose its two springs at no flow: 5 + 1 psi', () => {
    for (const { points } of Object.values(backflowLoss['reduced-pressure'])) {
      expect(points[0]).toEqual([0, 5 + 1]);
    }
  });

  it.each([
    ['3/4', 12.5],
    ['1', 19],
    ['1-1/4', 34],
  ])('scales the fall-off of the 3/4 in valve to %s in by the upper design flow, %d gpm', (size, design) => {
    const [, scaled, last] = reducingValveFallOff[size]!.points;
    expect(scaled![0]).toBeCloseTo((8 * design) / 12.5, 1);
    expect(scaled![1]).toBe(7.3);
    expect(last![0]).toBe(design);
    expect(last![1]).toBeCloseTo((7.3 * 12.5) / 8, 1);
  });

  it('never loses more in a larger size than in a smaller one at the same flow', () => {
    for (const bySize of [reducingValveFallOff, ...Object.values(backflowLoss)]) {
      const curves = risingSizes(bySize).map((size) => curveOf(bySize[size]!));
      for (const flow of [2, 8, 15, 40]) {
        const losses = curves.map((curve) => lossAt(curve, toSI(flow, 'gpm')));
        expect(losses).toEqual([...losses].sort((one, other) => other - one));
      }
    }
  });

  /** A second reading's typical losses, from memory but for the vented dual check. */
  it.each([
    ['backflow-reduced-pressure-1', 50, 10, 14],
    ['backflow-double-check-1', 50, 3, 7],
    ['backflow-dual-check-vented', 10, 8, 15],
    ['backflow-dual-check-vented', 0, 2, 4],
    ['filter', 20, 2, 8],
    ['mixing-valve', 9, 5, 10],
    ['heater-storage', 20, 1, 2],
  ] as const)('lies within the typical loss: %s at %d gpm', (key, flow, least, most) => {
    const loss = Object.fromEntries(every)[key]!.points.find(([x]) => x === flow)![1];
    expect(loss).toBeGreaterThanOrEqual(least);
    expect(loss).toBeLessThanOrEqual(most);
  });

  it('takes the tankless heater from the middles of 5 to 8, 12 to 15 and 20 to 25 psi', () => {
    expect(Object.fromEntries(deviceCurves['heater-tankless'].points)).toMatchObject({
      4: (5 + 8) / 2,
      6: (12 + 15) / 2,
      8: (20 + 25) / 2,
    });
  });

  it('keeps the softener within the 15 psi that NSF/ANSI 44 allows at rated flow', () => {
    expect(deviceCurves.softener.points.at(-1)).toEqual([15, 15]);
  });

  it('takes the mixing valve’s loss from its Cv of 3', () => {
    for (const [flow, loss] of deviceCurves['mixing-valve'].points)
      expect(loss).toBeCloseTo((flow / 3) ** 2, 6);
  });
});

describe('manifolds', () => {
  it('take the least through Cv of each size in a second reading', () => {
    const least: Record<string, number> = {};
    for (const row of readCsv('multiport-tees.csv')) {
      if (row.path !== 'through') continue;
      const cv = cell(row, 'Cv')!;
      // The smaller end decides where the two ends differ; it is the size that the reading names.
      const ends = /(?:\) | )([\d/-]+)x([\d/-]+)$/.exec(row.fitting!);
      if (ends !== null && ends[1] !== ends[2]) continue;
      least[row.size_used!] = Math.min(least[row.size_used!] ?? Number.POSITIVE_INFINITY, cv);
    }
    const ours = Object.entries(manifoldCv.rows).filter(([, row]) => row.verified !== 'computed');
    expect(Object.fromEntries(ours.map(([size, { values }]) => [size, values.cv]))).toEqual(least);
  });

  it('take 1-1/2 in as the smaller 1-1/4 in', () => {
    expect(manifoldCv.rows['1-1/2']!.values).toEqual(manifoldCv.rows['1-1/4']!.values);
  });
});

describe('arresters', () => {
  it('rise in units and in connection from A to F', () => {
    const rows = Object.entries(arresterSizes.rows);
    expect(rows.map(([size]) => size).join('')).toBe('ABCDEF');
    for (const column of ['unitsUpTo', 'connection'] as const) {
      const values = rows.map(([, row]) => row.values[column]!);
      expect(values).toEqual([...new Set(values)].sort((a, b) => a - b));
    }
    // Each range begins one unit above the one before: 1, 12, 33, 61, 114 and 155.
    const ends = rows.map(([, row]) => row.values.unitsUpTo!);
    expect([0, ...ends.slice(0, -1)].map((end) => end + 1)).toEqual([1, 12, 33, 61, 114, 155]);
    expect(ends.at(-1)).toBe(330);
  });
});
