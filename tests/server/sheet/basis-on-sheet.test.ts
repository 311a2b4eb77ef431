import { describe, expect, it } from 'vitest';
import type { Basis, Job } from '../../../engine/index.ts';
import { shippedPrices } from '../../../server/prices/shipped-prices.ts';
import { makeSheet } from '../../../server/sheet/make-sheet.ts';
import type { SheetBlock, SheetTable } from '../../../views/sheet.ts';
import { readSmallJob } from '../small-job.ts';

const small = await readSmallJob();
const prices = await shippedPrices();

function sectionsOf(job: Job): Map<string, readonly SheetBlock[]> {
  const made = makeSheet(job, { date: '' }, prices, 'the cottage');
  if (!('sections' in made)) throw new Error(made.sentences.join(' '));
  return new Map(made.sections.map(({ id, blocks }) => [id, blocks]));
}

function withBasis(change: Partial<Basis>): Job {
  return { ...small, basis: { ...small.basis, ...change } };
}

/** Facts of the first section, by name; the hash, which any change changes, is left out. */
function facts(job: Job): Map<string, string> {
  const found = sectionsOf(job)
    .get('job')!
    .find((block) => block.is === 'facts')!;
  return new Map(found.rows.filter(([name]) => !name.startsWith('Job file')));
}

function tableIn(job: Job, section: string): SheetTable {
  return sectionsOf(job)
    .get(section)!
    .find((block) => block.is === 'table')!;
}

const byLoadingUnits = withBasis({ demand: { method: 'en-806-3' } });
const ownTable = withBasis({
  demand: {
    method: 'own-table',
    name: 'Curve of the invented town',
    points: [
      { units: 1, flow: { typed: '3 gpm', si: 3 * 6.30902e-5 } },
      { units: 50, flow: { typed: '29.5 gpm', si: 29.5 * 6.30902e-5 } },
    ],
  },
});

describe('the basis on the sheet', () => {
  it.each([
    ['demand', { demand: { method: 'en-806-3' } }, 'Demand by'],
    ['between', { between: 'round-up' }, 'Between table rows'],
    ['friction', { friction: 'darcy-weisbach' }, 'Friction'],
    ['coldTemperature', { coldTemperature: { typed: '50 F', si: 283.15 } }, 'Cold water'],
    ['hotTemperature', { hotTemperature: { typed: '130 F', si: 327.594 } }, 'Hot water'],
    ['elevationFactor', { elevationFactor: { typed: '0.433 psi/ft', si: 9794.8 } }, 'Pressure by height'],
    ['fittings', { fittings: 'loss-coefficient' }, 'Fittings'],
    ['fittingAllowancePercent', { fittingAllowancePercent: 40 }, 'Fitting allowance'],
    ['velocityCold', { velocityCold: { typed: '7 ft/s', si: 2.1336 } }, 'Velocity limit, cold'],
    ['velocityHot', { velocityHot: { typed: '4 ft/s', si: 1.2192 } }, 'Velocity limit, hot'],
  ] satisfies [keyof Basis, Partial<Basis>, string][])('says when %s is another', (_field, change, name) => {
    const [before, after] = [facts(small), facts(withBasis(change))];
    expect(before.get(name)).toBeTruthy();
    expect(after.get(name)).not.toBe(before.get(name));
  });

  it('counts in the units of the demand method, and names it with its source', () => {
    const schedule = tableIn(byLoadingUnits, 'fixtures');
    expect(schedule.columns.map(({ head }) => head)).toEqual(
      expect.arrayContaining(['LU cold', 'LU hot', 'LU total']),
    );
    // EN 806-3, table 2: a kitchen sink or a shower head 2 units, a wash basin or a WC cistern 1, a garden tap 5.
    const total = schedule.columns.findIndex(({ head }) => head === 'LU total');
    expect(schedule.rows.map(({ cells }) => [cells[0], Number(cells[total])])).toEqual([
      ['HB', 5],
      ['KS', 2],
      ['LAV', 1],
      ['WC', 1],
      ['SH', 2],
    ]);
    expect(schedule.note).toContain('EN 806-3');
    const runs = tableIn(byLoadingUnits, 'runs');
    const units = runs.columns.findIndex(({ head }) => head === 'LU');
    const service = runs.rows[0]!.cells;
    expect([service[0], Number(service[units])]).toEqual(['SV', 11]);
    expect(facts(byLoadingUnits).get('Demand by')).toMatch(/EN 806-3 loading units.*table 2.*table 3/);
    expect(JSON.stringify(schedule)).not.toContain('WSFU');
  });

  it('sets down the table that a job brings along, row by row as typed', () => {
    const own = tableIn(ownTable, 'job');
    expect(own.title).toContain('Curve of the invented town');
    expect(own.rows.map(({ cells }) => cells)).toEqual([
      ['1', '3 gpm'],
      ['50', '29.5 gpm'],
    ]);
    expect(facts(ownTable).get('Demand by')).toContain('Curve of the invented town');
  });

  it('names a metric size in millimetres', () => {
    const [scheme] = small.schemes;
    const runs = scheme!.runs.map((run) =>
      run.id === 'KSC' ? { ...run, size: '20x2.5', material: 'multilayer' as const } : run,
    );
    const { rows } = tableIn({ ...small, schemes: [{ ...scheme!, runs }] }, 'runs');
    const pipe = rows.find(({ cells }) => cells[0] === 'KSC')!.cells[3];
    expect(pipe).toMatch(/^20x2\.5 mm /);
  });
});
