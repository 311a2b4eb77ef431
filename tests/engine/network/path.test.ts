import { expect, it } from 'vitest';
import { explainRun } from '../../../engine/explain/explain.ts';
import { feeds, pathTo } from '../../../engine/network/path.ts';
import { solve } from '../../../engine/network/solve.ts';
import { unverifiedOnPath } from '../../../engine/network/unverified.ts';
import { report } from '../../../engine/report.ts';
import { cold, fixture, gpm, job, networkOf, psi, reportOf, run } from '../../jobs/written-job.ts';

const closets = ['a', 'b'].map((id) => fixture(id, 'water-closet-tank'));
const network = networkOf(
  job(closets, [
    run('service', 'street'),
    run('left', 'service', { end: cold('a') }),
    run('right', 'service'),
    run('end', 'right', { end: cold('b') }),
  ]),
);
const idOf = (position: number): string => network.runs[position]!.id;
const position = (id: string): number => network.positionOf.get(id)!;

it('goes from the street to a run', () => {
  expect(pathTo(network, position('end')).map(idOf)).toEqual(['service', 'right', 'end']);
  expect(pathTo(network, 0).map(idOf)).toEqual(['service']);
});

it('tells what a run feeds', () => {
  expect(feeds(network, position('right'), position('end'))).toBe(true);
  expect(feeds(network, position('right'), position('right'))).toBe(true);
  expect(feeds(network, position('right'), position('left'))).toBe(false);
  expect(feeds(network, position('end'), position('right'))).toBe(false);
});

it('lists each unverified value of a path once, and none that a document proves', () => {
  const { solution, unverified } = reportOf(network.job);
  const inlet = network.inlets.find(({ fixture: { id } }) => id === 'b')!;
  const cited = unverifiedOnPath(network, solution, inlet);
  const keys = cited.map(({ table, row, column }) => `${table.id} ${row} ${column}`);
  expect(new Set(keys).size).toBe(keys.length);
  // The closet’s 2.2 units are recalled; its 3 gpm and 20 psi were read.
  expect(keys).toContain('ipc-2018-fixture-units water closet, private, flush tank total');
  expect(keys.some((key) => key.startsWith('ipc-2018-outlets'))).toBe(false);
  for (const { verified } of cited) expect(['memory', 'common-practice']).toContain(verified);
  expect(unverified.length).toBeGreaterThan(0);
});

/** The service on the shower's path carries the units of the closet and the sink as well. */
it('lists what the demand of the path counts off the path, and both rows that it lies between', () => {
  const fixtures = [
    fixture('shower', 'shower', { inlets: 'cold' }),
    fixture('closet', 'water-closet-tank'),
    fixture('sink', 'kitchen-sink', { inlets: 'cold' }),
  ];
  const house = networkOf(
    job(fixtures, [
      run('service', 'street'),
      run('shower', 'service', { end: cold('shower') }),
      run('closet', 'service', { end: cold('closet') }),
      run('sink', 'service', { end: cold('sink') }),
    ]),
  );
  const inlet = house.inlets.find(({ fixture: { id } }) => id === 'shower')!;
  const cited = unverifiedOnPath(house, solve(house), inlet);
  const units = house.sources.units
    .flat()
    .flatMap((source) => (source.what === 'inlet' ? [source.each] : []));
  const recalled = units.filter(({ verified }) => verified === 'memory');
  expect(recalled.map(({ row }) => row)).toContain('water closet, private, flush tank');
  for (const { row } of recalled) expect(cited.map((each) => each.row)).toContain(row);

  // Each row of the curve that the explanation reads, and no other.
  const sum = explainRun(report(house), 'service')!.get('service.demand')!;
  const read = Object.values(sum.terms).flatMap((term) => (term.from === 'table' ? [term.cite.row] : []));
  const rows = cited.filter(({ table }) => table.id.includes('demand')).map(({ row }) => row);
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(read).toContain(row);
});

it('lists no demand for a run to one fixture, which carries that fixture’s own flow', () => {
  const only = networkOf(
    job([fixture('closet', 'water-closet-tank')], [run('only', 'street', { end: cold('closet') })]),
  );
  const tables = unverifiedOnPath(only, solve(only), only.inlets[0]!).map(({ table }) => table.id);
  expect(tables.filter((id) => id.includes('demand') || id.includes('fixture-units'))).toEqual([]);
});

it('lists nothing where the maker gives flow and pressure and the pipe was read', () => {
  const own = fixture('a', 'lavatory', { inlets: 'cold', flow: gpm(1), pressure: psi(10) });
  const { unverified } = reportOf(
    job([own], [run('only', 'street', { material: 'copper-l', end: cold('a') })]),
  );
  const tables = new Set(unverified.map(({ table }) => table.id));
  expect([...tables].filter((id) => /outlets|demand|fixture-units/.test(id))).toEqual([]);
});
