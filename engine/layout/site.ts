import { toSI } from '../../tables/units/definitions.ts';
import type { Fixture, Job, Level, Place, Places } from '../job/job.ts';
import { type Grid, gridOf, type Point } from './grid.ts';
import { inletPractice } from './inlet-practice.ts';
import type { Missing } from './missing.ts';

/** A storey as pipe sees it. */
export interface Storey {
  readonly id: string;
  /** Stands in the names of runs: the shortest beginning of its id that no other level has, in capitals. */
  readonly tag: string;
  readonly name: string;
  /** Heights on the grid: the finished floor, and the pipes that serve the storey. */
  readonly floor: number;
  readonly pipes: number;
}

/** A fixture where it stands; `plan` is left out where only the length of its pipe is known. */
export interface PlacedFixture {
  readonly fixture: Fixture;
  readonly storey: Storey;
  /** Height of its inlet. */
  readonly height: number;
  readonly plan?: { readonly x: number; readonly y: number };
  readonly distance?: number;
}

/** A job's building on the grid. */
export interface Site {
  readonly grid: Grid;
  readonly storeys: readonly Storey[];
  /** Where the service comes in and where the mechanical room is, on their floors. */
  readonly entry: Point;
  readonly room: Point;
  /** Height at which pipes leave the mechanical room. */
  readonly travel: number;
  /** At least one: where the job names no riser, pipes rise in the mechanical room. */
  readonly risers: readonly { readonly x: number; readonly y: number }[];
  readonly fixtures: readonly PlacedFixture[];
}

/**
 * Reads the places of a job. Heights that no field gives are common practice: pipes of the lowest level hang a foot
 * under the floor above it (or 8 ft over their own where there is none), those of the others lie 6 in under their
 * floor, in the joists; an inlet stands at its kind's usual height.
 *
 * @returns the site, or everything that the job does not say
 */
export function siteOf(job: Job): { ok: true; site: Site } | { ok: false; missing: readonly Missing[] } {
  const grid = gridOf(job.units);
  const storeys = storeysOf(job.levels, grid);
  const byId = new Map(storeys.map((storey) => [storey.id, storey]));
  const missing: Missing[] = [];
  if (job.places === undefined) missing.push({ code: 'places' });
  if (job.fixtures.length === 0) missing.push({ code: 'fixtures' });
  const fixtures = job.fixtures.flatMap((fixture) => {
    const storey = byId.get(fixture.level ?? '');
    if (storey === undefined) missing.push({ code: 'fixture-level', fixture: fixture.id });
    const placed = storey && placedOn(storey, fixture, grid);
    if (storey !== undefined && placed === undefined)
      missing.push({ code: 'fixture-place', fixture: fixture.id });
    return placed === undefined ? [] : [placed];
  });
  const onFloor = (name: Exclude<keyof Places, 'risers'>): Point | undefined => {
    const place: Place | undefined = job.places?.[name];
    if (place === undefined) return undefined;
    const storey = byId.get(place.level);
    if (storey === undefined) missing.push({ code: 'place-level', place: name });
    return storey && { x: grid.snap(place.x.si), y: grid.snap(place.y.si), z: storey.floor };
  };
  const entry = onFloor('serviceEntry');
  const room = onFloor('mechanicalRoom');
  if (missing.length > 0 || entry === undefined || room === undefined) return { ok: false, missing };
  const risers = job.places?.risers.map(({ x, y }) => ({ x: grid.snap(x.si), y: grid.snap(y.si) })) ?? [];
  return {
    ok: true,
    site: {
      grid,
      storeys,
      entry,
      room,
      travel: travelHeight(storeys, room.z),
      risers: risers.length === 0 ? [{ x: room.x, y: room.y }] : risers,
      fixtures,
    },
  };
}

function placedOn(storey: Storey, fixture: Fixture, grid: Grid): PlacedFixture | undefined {
  const height =
    storey.floor + grid.snap(fixture.height?.si ?? toSI(inletPractice[fixture.kind].height, 'in'));
  const { x, y, distance } = fixture;
  if (x !== undefined && y !== undefined) {
    return { fixture, storey, height, plan: { x: grid.snap(x.si), y: grid.snap(y.si) } };
  }
  return distance && { fixture, storey, height, distance: grid.snap(distance.si) };
}

function storeysOf(levels: readonly Level[], grid: Grid): Storey[] {
  const floors = levels.map(({ elevation }) => grid.snap(elevation.si));
  const lowest = Math.min(...floors);
  const tags = tagsOf(levels.map(({ id }) => id));
  return levels.map(({ id, name }, index) => {
    const floor = floors[index]!;
    const above = Math.min(...floors.filter((other) => other > floor));
    const ceiling = Number.isFinite(above) ? above - grid.feet(1) : floor + grid.feet(8);
    return { id, name, tag: tags[index]!, floor, pipes: floor === lowest ? ceiling : floor - grid.feet(0.5) };
  });
}

/** At the ceiling of the mechanical room: where the pipes of the next storey lie, or its own if it is the lowest. */
function travelHeight(storeys: readonly Storey[], floor: number): number {
  const lowest = Math.min(...storeys.map((storey) => storey.floor));
  const own = storeys.find((storey) => storey.floor === floor)!;
  const above = storeys.filter((storey) => storey.floor > floor).map(({ pipes }) => pipes);
  return floor === lowest || above.length === 0 ? own.pipes : Math.min(...above);
}

/** A tag that is taken from an id; where one is not of this form the levels are numbered. */
const tagPattern = /^[A-Z0-9]{1,8}$/;

function tagsOf(ids: readonly string[]): string[] {
  const capitals = ids.map((id) => id.toUpperCase());
  const tags = capitals.map((id) => {
    for (let length = 1; length <= id.length; length++) {
      const tag = id.slice(0, length);
      if (capitals.filter((other) => other.startsWith(tag)).length === 1) return tag;
    }
    return id;
  });
  const good = new Set(tags).size === tags.length && tags.every((tag) => tagPattern.test(tag));
  // A number follows in the name of a run.
  return (good ? tags : ids.map((_, index) => `L${index}`)).map((tag) => (/\d$/.test(tag) ? `${tag}-` : tag));
}
