import fc from 'fast-check';
import type { Fixture, FixtureGroup, Job, Level, Places } from '../../engine/job/job.ts';
import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { ft, job, psi, q } from '../jobs/written-job.ts';
import { keysOf } from './run.ts';

const feet = (least: number, most: number) => fc.integer({ min: least, max: most });
const spot = fc.record({ x: feet(0, 60), y: feet(0, 40) });

const fixture = fc.record({
  kind: fc.constantFrom(...keysOf(fixtureKinds)),
  level: fc.nat({ max: 100 }),
  group: fc.option(fc.nat({ max: 100 }), { nil: undefined }),
  at: spot,
  distance: fc.option(feet(1, 80), { nil: undefined, freq: 6 }),
  height: fc.option(feet(0, 7), { nil: undefined }),
});

/** Houses of one to four levels whose places and fixtures all stand on whole feet; no scheme yet. */
export const placedHouse: fc.Arbitrary<Job> = fc
  .record({
    units: fc.constantFrom('us' as const, 'si' as const),
    heights: fc.array(feet(8, 12), { minLength: 1, maxLength: 4 }),
    entry: spot,
    room: spot,
    roomOn: fc.nat({ max: 100 }),
    risers: fc.array(spot, { maxLength: 3 }),
    fixtures: fc.array(fixture, { minLength: 1, maxLength: 14 }),
    street: feet(40, 75),
    more: feet(0, 40),
  })
  .map(({ units, heights, entry, room, roomOn, risers, fixtures, street, more }) => {
    const levels = heights.map((_, index): Level => {
      const floor = heights.slice(0, index).reduce((sum, height) => sum + height, 0);
      return { id: `L${index}`, name: `Level ${index}`, elevation: ft(floor) };
    });
    const groups: FixtureGroup[] = [
      { id: 'bath', name: 'Bath', kind: 'full-bath' },
      { id: 'kitchen', name: 'Kitchen', kind: 'kitchen' },
    ];
    const on = (index: number): string => levels[index % levels.length]!.id;
    const places: Places = {
      serviceEntry: { level: 'L0', x: ft(entry.x), y: ft(entry.y) },
      mechanicalRoom: { level: on(roomOn), x: ft(room.x), y: ft(room.y) },
      risers: risers.map(({ x, y }, index) => ({ id: `R${index}`, x: ft(x), y: ft(y) })),
    };
    const schedule = fixtures.map(
      ({ kind, level, group, at, distance, height }, index): Fixture => ({
        id: `F${index}`,
        name: `Fixture ${index}`,
        kind,
        level: on(level),
        use: 'private',
        count: 1,
        ...(group === undefined ? {} : { group: groups[group % groups.length]!.id }),
        ...(height === undefined ? {} : { height: ft(height) }),
        ...(distance === undefined ? { x: ft(at.x), y: ft(at.y) } : { distance: ft(distance) }),
      }),
    );
    const house = job(schedule, [], {
      levels,
      groups,
      basis: { hotTemperature: q(120, 'F') },
      supply: { kind: 'static', elevation: ft(-4), low: psi(street), high: psi(street + more) },
    });
    return { ...house, units, places, schemes: [], chosen: 'trunk' };
  });
