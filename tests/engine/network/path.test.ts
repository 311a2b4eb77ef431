import { expect, it } from 'vitest';
import { feeds, pathTo } from '../../../engine/network/path.ts';
import { unverifiedOnPath } from '../../../engine/network/unverified.ts';
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

it('lists nothing where the maker gives flow and pressure and the pipe was read', () => {
  const own = fixture('a', 'lavatory', { inlets: 'cold', flow: gpm(1), pressure: psi(10) });
  const { unverified } = reportOf(
    job([own], [run('only', 'street', { material: 'copper-l', end: cold('a') })]),
  );
  const tables = new Set(unverified.map(({ table }) => table.id));
  // Nothing of the outlet table; the curve of demand, which one fixture does not use, may be cited.
  expect([...tables].filter((id) => id.includes('outlets'))).toEqual([]);
});
