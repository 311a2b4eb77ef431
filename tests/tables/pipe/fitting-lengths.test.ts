import { describe, expect, it } from 'vitest';
import { copperSolderLengths } from '../../../tables/pipe/fitting-lengths/copper-solder.ts';
import { copperValveLengths } from '../../../tables/pipe/fitting-lengths/copper-valves.ts';
import { cpvcSolventLengths } from '../../../tables/pipe/fitting-lengths/cpvc-solvent.ts';
import type { FittingLengths } from '../../../tables/pipe/fitting-lengths/fitting-columns.ts';
import { illinoisValveLengths } from '../../../tables/pipe/fitting-lengths/illinois-valves.ts';
import { illinoisWroughtLengths } from '../../../tables/pipe/fitting-lengths/illinois-wrought.ts';
import {
  peInsertStandIn,
  pexExpansionStandIn,
} from '../../../tables/pipe/fitting-lengths/insert-stand-ins.ts';
import { pexInsertBrassLengths } from '../../../tables/pipe/fitting-lengths/pex-insert-brass.ts';
import { pexInsertPolymerLengths } from '../../../tables/pipe/fitting-lengths/pex-insert-polymer.ts';
import { pexPressBronzeLengths } from '../../../tables/pipe/fitting-lengths/pex-press-bronze.ts';
import { pexPressPolymerLengths } from '../../../tables/pipe/fitting-lengths/pex-press-polymer.ts';
import { pvcSolventLengths } from '../../../tables/pipe/fitting-lengths/pvc-solvent.ts';
import { serviceStopLengths } from '../../../tables/pipe/fitting-lengths/service-stops.ts';
import { steelThreadedLengths } from '../../../tables/pipe/fitting-lengths/steel-threaded.ts';
import { upcThreadedLengths } from '../../../tables/pipe/fitting-lengths/upc-threaded.ts';
import { fittingLengths } from '../../../tables/pipe/fitting-lengths.ts';
import {
  type FittingKind,
  fittings,
  jointsOf,
  type MaterialId,
  materials,
} from '../../../tables/pipe/names.ts';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';
import { type CsvRow, cell, readCsv } from '../second-reading/read-csv.ts';

describe('fitting lengths', () => {
  const metric: readonly MaterialId[] = ['pe-x', 'pe-x-s5', 'copper-en', 'copper-thin', 'multilayer'];

  it('are not on file for metric pipe, whose fittings go by K', () => {
    for (const material of metric) expect(fittingLengths[material]).toEqual({});
  });

  it.each((Object.keys(materials) as MaterialId[]).filter((one) => !metric.includes(one)))(
    'stand for every joint of %s, and for no other',
    (material) => {
      const joints = fittingLengths[material];
      expect(Object.keys(joints).sort()).toEqual([...jointsOf[material]].sort());
      for (const tables of Object.values(joints)) expect(tables.length).toBeGreaterThan(0);
    },
  );

  it('know every size and kind that they name', () => {
    for (const tables of Object.values(fittingLengths).flatMap((joints) => Object.values(joints))) {
      for (const { id, rows } of tables) {
        for (const [size, { values }] of Object.entries(rows)) {
          expect(nominalSizes[size], `${id}, ${size}`).toBeDefined();
          for (const kind of Object.keys(values)) expect(Object.keys(fittings), id).toContain(kind);
        }
      }
    }
  });

  it('lose more in a branch than straight through, wherever both are printed', () => {
    for (const tables of Object.values(fittingLengths).flatMap((joints) => Object.values(joints))) {
      for (const { id, rows } of tables) {
        for (const [size, { values }] of Object.entries(rows)) {
          const { 'tee-run': run, 'tee-branch': branch } = values;
          if (run !== undefined && branch !== undefined)
            expect(branch, `${id}, ${size}`).toBeGreaterThan(run);
        }
      }
    }
  });

  it('name a stand-in as one', () => {
    for (const table of [pexExpansionStandIn, peInsertStandIn]) {
      expect(table.title).toMatch(/^Stand-in/);
      expect(table.note).toMatch(/^A stand-in, not a published table/);
      expect(table.source.id).toBe('hightap');
      for (const row of Object.values(table.rows))
        expect(row.verified ?? table.verified).toBe('common-practice');
    }
  });
});

type Columns = Readonly<Record<string, FittingKind>>;

/** Every cell of a second reading with one row a size is in the first, and the first has none besides. */
function compareBySize(table: FittingLengths, read: readonly CsvRow[], size: string, columns: Columns) {
  const found: Record<string, Partial<Record<FittingKind, number>>> = {};
  for (const row of read) {
    const values: Partial<Record<FittingKind, number>> = {};
    for (const [column, kind] of Object.entries(columns)) {
      const value = cell(row, column);
      if (value !== undefined) values[kind] = value;
    }
    if (Object.keys(values).length > 0) found[row[size]!] = values;
  }
  const ours = Object.fromEntries(Object.entries(table.rows).map(([name, { values }]) => [name, values]));
  expect(ours).toEqual(found);
}

/** Turns a reading with one row a fitting into one row a size. */
function bySize(read: readonly CsvRow[], name: string): CsvRow[] {
  const sizes = Object.keys(read[0]!).filter((column) => /^\d/.test(column));
  return sizes.map((size) => ({
    size,
    ...Object.fromEntries(read.map((row) => [row[name]!, row[size]!])),
  }));
}

describe('fitting lengths against a second reading', () => {
  const known = (row: CsvRow) => nominalSizes[row.nominal!] !== undefined;

  it('copper, solder joints and valves (both from memory)', () => {
    const read = readCsv('copper-fittings.csv').filter(known);
    expect(read).toHaveLength(11);
    compareBySize(copperSolderLengths, read, 'nominal', {
      ell_90: 'ell',
      ell_45: 'ell-45',
      tee_side: 'tee-branch',
      tee_run: 'tee-run',
      coupling: 'coupling',
    });
    compareBySize(copperValveLengths, read, 'nominal', {
      ball: 'ball-valve',
      gate: 'gate-valve',
      butterfly: 'butterfly-valve',
      check: 'check-valve',
    });
  });

  it('Illinois Table Q', () => {
    const read = bySize(readCsv('illinois-table-q.csv'), 'fitting');
    expect(read).toHaveLength(8);
    compareBySize(illinoisWroughtLengths, read, 'size', {
      '90_ell_wrought': 'ell',
      '45_ell_wrought': 'ell-45',
      tee_run_wrought: 'tee-run',
      tee_branch_wrought: 'tee-branch',
    });
    compareBySize(illinoisValveLengths, read, 'size', {
      compression_stop: 'compression-stop',
      globe: 'globe-valve',
      gate: 'gate-valve',
    });
  });

  const pex = (system: string, within: readonly string[]) =>
    readCsv('pex-fittings.csv').filter((row) => row.system === system && within.includes(row.nominal!));
  const columns: Columns = {
    coupling_ft: 'coupling',
    elbow_ft: 'ell',
    tee_run_ft: 'tee-run',
    tee_branch_ft: 'tee-branch',
  };

  it.each([
    ['F1807_crimp_brass', pexInsertBrassLengths, ['3/8', '1/2', '3/4', '1']],
    ['press_bronze', pexPressBronzeLengths, ['1-1/4', '1-1/2', '2']],
    ['F2159_crimp_polymer', pexInsertPolymerLengths, ['3/8', '1/2', '3/4', '1']],
  ] as const)('PEX %s', (system, table, sizes) => {
    compareBySize(table, pex(system, sizes), 'nominal', columns);
  });

  it('PEX press_polymer: the sizes above 1 in, and the tees at 3/8 in', () => {
    const read = pex('press_polymer', ['3/8', '1-1/4', '1-1/2', '2']).map((row) =>
      row.nominal === '3/8' ? { ...row, coupling_ft: '', elbow_ft: '' } : row,
    );
    compareBySize(pexPressPolymerLengths, read, 'nominal', columns);
  });

  it('PVC and CPVC schedule fittings: the manual, which the other set exceeds by no more than 1.1 ft', () => {
    const read = readCsv('pvc-fittings.csv');
    const set = (name: string) =>
      bySize(
        read.filter((row) => row.set === name),
        'fitting',
      );
    const names: Columns = { ell_90: 'ell', ell_45: 'ell-45', tee_run: 'tee-run', tee_branch: 'tee-branch' };
    compareBySize(pvcSolventLengths, set('B'), 'size', names);
    const apart = set('A').flatMap((row) =>
      Object.entries(names).map(([column, kind]) =>
        Math.abs(cell(row, column)! - pvcSolventLengths.rows[row.size!]!.values[kind]!),
      ),
    );
    expect(Math.max(...apart)).toBeCloseTo(1.1, 6);
  });

  it('threaded steel', () => {
    compareBySize(steelThreadedLengths, readCsv('steel-threaded.csv'), 'nominal', {
      ell_90: 'ell',
      ell_45: 'ell-45',
      tee_branch: 'tee-branch',
    });
  });

  /** L/D of 30, 14 and 60 times the bore, as the table's own head says. */
  it('threaded steel is L/D times the bore', async () => {
    const { steelSchedule40 } = await import('../../../tables/pipe/asme-b36.10m/schedule-40.ts');
    for (const [size, { values }] of Object.entries(steelThreadedLengths.rows)) {
      const feet = steelSchedule40.rows[size]!.values.bore! / 12;
      expect(Math.abs(values.ell! / (30 * feet) - 1), size).toBeLessThan(0.01);
      expect(Math.abs(values['ell-45']! / (14 * feet) - 1), size).toBeLessThan(0.01);
      expect(Math.abs(values['tee-branch']! / (60 * feet) - 1), size).toBeLessThan(0.01);
    }
  });

  /** L/D of 30, 16, 20 and 60 in schedule 40 bores, rounded to a tenth; the ell at 2 in alone is longer in print. */
  it('CPVC is L/D times the bore of schedule 40', async () => {
    const { steelSchedule40 } = await import('../../../tables/pipe/asme-b36.10m/schedule-40.ts');
    const ratios = { ell: 30, 'ell-45': 16, 'tee-run': 20, 'tee-branch': 60 } as const;
    const apart: string[] = [];
    for (const [size, { values }] of Object.entries(cpvcSolventLengths.rows)) {
      for (const [kind, ratio] of Object.entries(ratios) as [keyof typeof ratios, number][]) {
        const feet = (ratio * steelSchedule40.rows[size]!.values.bore!) / 12;
        if (Math.abs(values[kind]! - feet) > 0.06) apart.push(`${size} ${kind}: ${values[kind]}`);
      }
    }
    expect(Object.keys(cpvcSolventLengths.rows)).toHaveLength(6);
    expect(apart).toEqual(['2 ell: 5.5']);
  });

  it('corporation stops 9 ft in six sizes; curb stops 6, 6, 7, 7, 8 and 8 ft', () => {
    const sizes = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'];
    const feet = (kind: FittingKind) => sizes.map((size) => serviceStopLengths.rows[size]!.values[kind]);
    expect(Object.keys(serviceStopLengths.rows)).toHaveLength(6);
    expect(feet('corporation-stop')).toEqual([9, 9, 9, 9, 9, 9]);
    expect(feet('curb-stop')).toEqual([6, 6, 7, 7, 8, 8]);
  });

  it('UPC threaded fittings rise with size in every column, and share coupling and run', () => {
    const sizes = Object.keys(upcThreadedLengths.rows).sort((a, b) => nominalSizes[a]! - nominalSizes[b]!);
    expect(sizes).toHaveLength(10);
    const kinds: FittingKind[] = ['ell', 'ell-45', 'tee-branch', 'coupling', 'gate-valve', 'globe-valve'];
    for (const kind of kinds) {
      const feet = sizes.map((size) => upcThreadedLengths.rows[size]!.values[kind]!);
      expect(feet, kind).toEqual([...new Set(feet)].sort((a, b) => a - b));
    }
    for (const { values } of Object.values(upcThreadedLengths.rows)) {
      expect(values['tee-run']).toBe(values.coupling);
    }
  });
});
