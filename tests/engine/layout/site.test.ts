import { describe, expect, it } from 'vitest';
import type { Job } from '../../../engine/job/job.ts';
import { type Site, siteOf } from '../../../engine/layout/site.ts';
import { fixture, ft, job } from '../../jobs/written-job.ts';

const levels = [
  { id: 'lower', name: 'Lower', elevation: ft(0) },
  { id: 'main', name: 'Main', elevation: ft(9) },
  { id: 'upper', name: 'Upper', elevation: ft(18) },
];
const at = (x: number, y: number) => ({ x: ft(x), y: ft(y) });
const places = {
  serviceEntry: { level: 'lower', ...at(10, 0) },
  mechanicalRoom: { level: 'lower', ...at(10, 12) },
  risers: [{ id: 'R', ...at(20, 12) }],
};
const sink = fixture('SINK', 'kitchen-sink', { level: 'main', ...at(3, 4) });

function house(rest: Partial<Job> = {}, fixtures = [sink]): Job {
  return { ...job(fixtures, [], { levels }), places, schemes: [], ...rest };
}

function site(from: Job): Site {
  const read = siteOf(from);
  if (!read.ok) throw new Error(JSON.stringify(read.missing));
  return read.site;
}

describe('siteOf', () => {
  it('hangs the lowest pipes a foot under the next floor, and lays the others 6 in under their own', () => {
    const inches = site(house()).storeys.map(({ tag, floor, pipes }) => [tag, floor, pipes]);
    expect(inches).toEqual([
      ['L', 0, 96],
      ['M', 108, 102],
      ['U', 216, 210],
    ]);
  });

  it('runs the pipes of a house of one level 8 ft over its floor', () => {
    const one = { levels: [{ id: 'only', name: 'Only', elevation: ft(2) }] };
    const only = { ...places.serviceEntry, level: 'only' };
    const flat = house({ ...one, places: { ...places, serviceEntry: only, mechanicalRoom: only } }, [
      { ...sink, level: 'only' },
    ]);
    expect(site(flat).storeys[0]?.pipes).toBe((2 + 8) * 12);
    expect(site(flat).travel).toBe((2 + 8) * 12);
  });

  it('leaves the mechanical room at its ceiling: from the main floor under the upper one', () => {
    expect(site(house()).travel).toBe(96);
    const raised = { ...places, mechanicalRoom: { ...places.mechanicalRoom, level: 'main' } };
    expect(site(house({ places: raised })).travel).toBe(210);
  });

  it("puts an inlet at its own height, else at its kind's: a kitchen sink 20 in over the floor", () => {
    expect(site(house()).fixtures[0]).toMatchObject({ height: 108 + 20, plan: { x: 36, y: 48 } });
    expect(site(house({}, [{ ...sink, height: ft(3) }])).fixtures[0]?.height).toBe(108 + 36);
  });

  it('rises in the mechanical room where no riser is named', () => {
    expect(site(house({ places: { ...places, risers: [] } })).risers).toEqual([{ x: 120, y: 144 }]);
  });

  it('calls levels by the shortest beginning that tells them apart', () => {
    const tags = (...ids: string[]) => {
      const named = ids.map((id, index) => ({ id, name: id, elevation: ft(9 * index) }));
      const on = { ...places.serviceEntry, level: ids[0]! };
      const from = house({ levels: named, places: { ...places, serviceEntry: on, mechanicalRoom: on } }, [
        { ...sink, level: ids[0]! },
      ]);
      return site(from).storeys.map(({ tag }) => tag);
    };
    expect(tags('main', 'mezzanine', 'upper')).toEqual(['MA', 'ME', 'U']);
    // A number follows the tag in the name of a run, so that one that ends in a number is set apart.
    expect(tags('L1', 'L2')).toEqual(['L1-', 'L2-']);
    expect(tags('a', 'A')).toEqual(['L0-', 'L1-']);
    expect(tags('one', 'one-half')).toEqual(['L0-', 'L1-']);
  });

  it('names everything that is missing at once', () => {
    const { x: _x, y: _y, ...nowhere } = sink;
    const lost = { ...fixture('LAV', 'lavatory'), ...at(1, 1) };
    const { places: _places, ...bare } = house({}, [nowhere, lost]);
    expect(siteOf(bare)).toEqual({
      ok: false,
      missing: [
        { code: 'places' },
        { code: 'fixture-place', fixture: 'SINK' },
        { code: 'fixture-level', fixture: 'LAV' },
      ],
    });
    const astray = { ...places, mechanicalRoom: { ...places.mechanicalRoom, level: 'attic' } };
    expect(siteOf(house({ places: astray }))).toEqual({
      ok: false,
      missing: [{ code: 'place-level', place: 'mechanicalRoom' }],
    });
    expect(siteOf(house({}, []))).toEqual({ ok: false, missing: [{ code: 'fixtures' }] });
  });
});
