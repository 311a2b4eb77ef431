import { describe, expect, it } from 'vitest';
import { metricSize, nominalInches } from '../../../engine/hydraulics/nominal-inches.ts';
import { risingSizes } from '../../../engine/hydraulics/rising-sizes.ts';
import { pipeDimensions } from '../../../tables/pipe/dimensions.ts';
import { type MaterialId, materials } from '../../../tables/pipe/names.ts';
import { cell, readCsv } from '../second-reading/read-csv.ts';

const all = Object.entries(pipeDimensions);

describe('pipe dimensions', () => {
  it('stand for every material', () => {
    expect(Object.keys(pipeDimensions).sort()).toEqual(Object.keys(materials).sort());
  });

  it('have the sizes that each standard is copied in', () => {
    const counts = Object.fromEntries(all.map(([id, { rows }]) => [id, Object.keys(rows).length]));
    expect(counts).toEqual({
      pex: 10,
      'copper-k': 11,
      'copper-l': 11,
      'copper-m': 10,
      cpvc: 6,
      pe: 5,
      galvanized: 9,
      pvc: 9,
      'pe-x': 7,
      'pe-x-s5': 7,
      'copper-en': 8,
      'copper-thin': 8,
      multilayer: 8,
    });
  });

  it('have complete rows under known nominal sizes, wider with each size', () => {
    for (const [id, { rows }] of all) {
      const sizes = risingSizes(rows);
      for (const size of sizes) {
        expect(nominalInches(size), `${id}, ${size}`).toBeGreaterThan(0);
        const { outside, wall, bore } = rows[size]!.values;
        expect(wall, `${id}, ${size}`).toBeGreaterThan(0);
        expect(bore, `${id}, ${size}`).toBeLessThan(outside!);
      }
      for (const column of ['outside', 'bore'] as const) {
        const values = sizes.map((size) => rows[size]!.values[column]!);
        expect(values, `${id}, ${column}`).toEqual([...values].sort((a, b) => a - b));
      }
    }
  });

  it('have a bore of no more than the outside less twice the least wall', () => {
    for (const [id, { rows }] of all) {
      for (const [size, { values }] of Object.entries(rows)) {
        const largest = values.outside! - 2 * values.wall!;
        expect(values.bore! - largest, `${id}, ${size}`).toBeLessThan(0.0005);
      }
    }
  });
});

type Read = number | undefined;

/** A second reading of a table, by size, in the columns outside, wall and, where it has the same meaning, bore. */
function compare(
  material: MaterialId,
  read: readonly (readonly [size: string, outside: Read, wall: Read, bore?: Read])[],
  boreWithin: number,
) {
  let compared = 0;
  for (const [size, outside, wall, bore] of read) {
    const row = pipeDimensions[material].rows[size];
    if (row === undefined) continue;
    compared++;
    expect(row.values.outside, `${material}, ${size}, outside`).toBe(outside);
    expect(row.values.wall, `${material}, ${size}, wall`).toBe(wall);
    if (bore !== undefined) {
      expect(Math.abs(row.values.bore! - bore), `${material}, ${size}, bore`).toBeLessThan(boreWithin + 1e-9);
    }
  }
  expect(compared).toBe(Object.keys(pipeDimensions[material].rows).length);
}

describe('pipe dimensions against a second reading', () => {
  it.each([
    ['copper-k', 'CU_K'],
    ['copper-l', 'CU_L'],
    ['copper-m', 'CU_M'],
  ] as const)('%s', (material, name) => {
    const rows = readCsv('copper-b88.csv').filter((row) => row.material === name);
    compare(
      material,
      rows.map((row) => [row.nominal!, cell(row, 'OD_in'), cell(row, 'wall_in'), cell(row, 'ID_in')]),
      0,
    );
  });

  it('PEX: 1-1/4 and 1-1/2 in differ by a thousandth of an inch', () => {
    const rows = readCsv('pex-sdr-9.csv');
    const bores = rows.map(
      (row) => [row.nominal!, cell(row, 'OD_in'), cell(row, 'wall_min_in'), cell(row, 'avgID_in')] as const,
    );
    compare('pex', bores, 0.001);
    const apart = bores.filter(([size, , , bore]) => {
      const ours = pipeDimensions.pex.rows[size]?.values.bore;
      return ours !== undefined && ours !== bore;
    });
    expect(apart.map(([size]) => size)).toEqual(['1-1/4', '1-1/2']);
  });

  /** Average bore: outside diameter less twice the mean wall, which is the least wall and half its tolerance. */
  it('PEX: the rule of the average wall gives the bores', () => {
    for (const row of readCsv('pex-sdr-9.csv')) {
      const ours = pipeDimensions.pex.rows[row.nominal!]?.values.bore;
      if (ours === undefined) continue;
      const mean = cell(row, 'wall_min_in')! + cell(row, 'wall_tol_plus_in')! / 2;
      expect(Math.abs(ours - (cell(row, 'OD_in')! - 2 * mean)), row.nominal).toBeLessThan(0.0011);
    }
  });

  it('CPVC: its bores are the largest ones, 0.020 to 0.023 in wider than the average', () => {
    const rows = readCsv('cpvc-sdr-11.csv');
    compare(
      'cpvc',
      rows.map((row) => [row.nominal!, cell(row, 'OD_in'), cell(row, 'wall_min_in')]),
      0,
    );
    for (const row of rows) {
      const wider = cell(row, 'ID_in')! - pipeDimensions.cpvc.rows[row.nominal!]!.values.bore!;
      expect(wider, row.nominal).toBeCloseTo(row.nominal === '2' ? 0.023 : 0.02, 6);
    }
  });

  it('PVC and steel, schedule 40', () => {
    const rows = readCsv('schedule-40.csv');
    const columns = [
      ['pvc', 'PVC40_ID_b_avg_in'],
      ['galvanized', 'STEEL40_ID_in'],
    ] as const;
    for (const [material, bore] of columns) {
      compare(
        material,
        rows.map((row) => [row.nominal!, cell(row, 'OD_in'), cell(row, 'wall_min_in'), cell(row, bore)]),
        0,
      );
    }
  });

  it('PE: two rules for the mean wall, up to 0.004 in apart in the bore', () => {
    compare(
      'pe',
      readCsv('pe-sdr-9.csv').map((row) => [
        row.nominal!,
        cell(row, 'OD_in'),
        cell(row, 'wall_min_in'),
        cell(row, 'avgID_or_controlledID_in'),
      ]),
      0.004,
    );
  });

  /** Water content printed in a government problem set: ounces per foot = (pi/4) d^2 x 12 in / 231 in3 x 128 oz. */
  it.each([
    ['copper-m', 'CuM', 0.006],
    ['copper-l', 'CuL', 0.006],
    ['copper-k', 'CuK', 0.013],
    ['pex', 'PEX_SDR9', 0.007],
  ] as const)('%s holds the printed ounces of water per foot', (material, column, within) => {
    for (const row of readCsv('water-content.csv')) {
      const bore = pipeDimensions[material].rows[row.nominal!]!.values.bore!;
      const ounces = (Math.PI / 4) * bore ** 2 * (12 / 231) * 128;
      expect(Math.abs(ounces / cell(row, column)! - 1), row.nominal).toBeLessThan(within);
    }
  });

  it.each([
    ['copper-en', 'EN1057_Cu'],
    ['copper-thin', 'EN1057_TableX'],
    ['pe-x', 'ISO15875_PEX_S3.2'],
    ['pe-x-s5', 'ISO15875_PEX_S5'],
  ] as const)('%s', (material, series) => {
    const read = readCsv('metric-pipe.csv').filter((row) => row.series === series);
    compare(
      material,
      read.map((row) => [
        `${row.outside_mm}x${row.wall_mm}`,
        cell(row, 'outside_mm'),
        cell(row, 'wall_mm'),
        cell(row, 'bore_mm'),
      ]),
      0,
    );
  });

  it('metric pipe is named by its outside diameter and wall, and what they leave is its bore', () => {
    const metric = all.filter(([, { columns }]) => columns.bore === 'mm');
    expect(metric.map(([id]) => id)).toEqual(['pe-x', 'pe-x-s5', 'copper-en', 'copper-thin', 'multilayer']);
    for (const [id, { rows }] of metric) {
      for (const [size, { values }] of Object.entries(rows)) {
        expect(metricSize(size), `${id}, ${size}`).toEqual({ outside: values.outside, wall: values.wall });
        expect(values.bore, `${id}, ${size}`).toBeCloseTo(values.outside! - 2 * values.wall!, 9);
      }
    }
  });

  /** Content in l/m printed by a maker of EN 1057 tube. */
  it.each([
    ['15x1', 0.133],
    ['18x1', 0.201],
    ['22x1', 0.314],
    ['28x1.5', 0.491],
    ['35x1.5', 0.804],
    ['54x2', 1.963],
  ])('copper %s holds %d litres a metre', (size, litres) => {
    const bore = pipeDimensions['copper-en'].rows[size]!.values.bore!;
    expect(Math.abs((Math.PI / 4) * (bore / 100) ** 2 * 10 - litres)).toBeLessThanOrEqual(0.0005);
  });
});
