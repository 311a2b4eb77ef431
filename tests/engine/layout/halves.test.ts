import { describe, expect, it } from 'vitest';
import type { Fixture } from '../../../engine/job/job.ts';
import { clustersOf } from '../../../engine/layout/clusters.ts';
import { halvesOf, unitsOf } from '../../../engine/layout/halves.ts';
import { siteOf } from '../../../engine/layout/site.ts';
import { profiles } from '../../../tables/profiles.ts';
import { fixture, ft } from '../../jobs/written-job.ts';
import { at, smallHouse } from './small-house.ts';

const profile = profiles['irc-2021'];

function halves(fixtures: readonly Fixture[]): [string, string[]][] | undefined {
  const read = siteOf(smallHouse(fixtures));
  if (!read.ok) throw new Error(JSON.stringify(read.missing));
  const parts = halvesOf(clustersOf(read.site.fixtures, [{ id: 'bath', name: 'Bath' }]), profile);
  return parts?.map(({ name, clusters }) => [
    name,
    clusters.flatMap(({ members }) => members.map((member) => member.fixture.id)),
  ]);
}

const sink = (id: string, x: number, level: string, rest: Partial<Fixture> = {}) =>
  fixture(id, 'kitchen-sink', { level, ...at(x, 5), ...rest });

describe('halvesOf', () => {
  it('cuts across the plan where that balances: 2.8 units each side', () => {
    expect(
      halves([sink('A', 0, 'lower'), sink('B', 5, 'lower'), sink('C', 20, 'lower'), sink('D', 30, 'upper')]),
    ).toEqual([
      ['West half', ['A', 'B']],
      ['East half', ['C', 'D']],
    ]);
  });

  it('cuts between levels where the plan would leave more on one side', () => {
    // All at one x but one: 1.4 against 4.2 across the plan, 2.8 against 2.8 between the levels.
    expect(
      halves([sink('A', 0, 'lower'), sink('B', 5, 'lower'), sink('C', 5, 'upper'), sink('D', 5, 'upper')]),
    ).toEqual([
      ['Lower half', ['A', 'B']],
      ['Upper half', ['C', 'D']],
    ]);
  });

  it('keeps a group whole, at the middle of its members', () => {
    const group = [sink('A', 0, 'lower', { group: 'bath' }), sink('B', 40, 'lower', { group: 'bath' })];
    expect(halves([...group, sink('C', 30, 'lower')])).toEqual([
      ['West half', ['A', 'B']],
      ['East half', ['C']],
    ]);
  });

  it('cuts by level alone where a fixture has no place on the plan', () => {
    const { x: _x, y: _y, ...somewhere } = sink('B', 0, 'upper', { distance: ft(9) });
    expect(halves([sink('A', 0, 'lower'), somewhere])?.map(([name]) => name)).toEqual([
      'Lower half',
      'Upper half',
    ]);
  });

  it('finds none where nothing can be told apart', () => {
    expect(halves([sink('A', 3, 'lower'), sink('B', 3, 'lower')])).toBeUndefined();
  });

  it('counts identical fixtures as many: 3 x 1.4', () => {
    const read = siteOf(smallHouse([sink('A', 0, 'lower', { count: 3 })]));
    expect(read.ok && unitsOf(clustersOf(read.site.fixtures, []), profile)).toBeCloseTo(4.2, 12);
  });
});
