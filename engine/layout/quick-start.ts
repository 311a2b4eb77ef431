import type { ProfileId } from '../../tables/profiles.ts';
import type {
  Basis,
  Fixture,
  FixtureGroup,
  Job,
  Level,
  Places,
  Quantity,
  QuantityDimension,
  Supply,
  UnitSystem,
} from '../job/job.ts';
import { idPattern } from '../job/words.ts';
import { parseQuantity } from '../units/parse-quantity.ts';
import { type Grid, gridOf } from './grid.ts';
import { layOut } from './lay-out.ts';
import { layoutKinds } from './options.ts';
import { hoseBibbAt, type PlacedRoom, type Plan, placeIn, planOf } from './quick-start-plan.ts';
import { bathRoom, kitchen, laundry } from './quick-start-rooms.ts';

/** One level of the house to be, the lowest first. */
export interface QuickStartLevel {
  readonly name: string;
  /** From its floor to the next one above; above zero. */
  readonly height: Quantity;
  readonly fullBaths: number;
  readonly halfBaths: number;
  readonly laundries: number;
}

/** What a quick start asks. Counts are whole and not below zero; there is at least one level. */
export interface QuickStart {
  readonly name: string;
  readonly units: UnitSystem;
  readonly profile: ProfileId;
  readonly levels: readonly QuickStartLevel[];
  /** Number of the level with the kitchen, the lowest 0. */
  readonly kitchenLevel: number;
  readonly hoseBibbs: number;
  readonly iceMaker: boolean;
  /** A rain shower and a hand shower in a full bath of the highest level that has one. */
  readonly rainShower: boolean;
  readonly source:
    | { readonly kind: 'street'; readonly low: Quantity; readonly high: Quantity }
    | { readonly kind: 'well'; readonly cutIn: Quantity; readonly cutOut: Quantity };
}

const note =
  'A first draft from a few answers. Rooms stand on a plain rectangle, the street main 3 ft under the lowest floor, and ' +
  'lengths, sizes and temperatures are guesses: correct them to the building. The local code and the licensed plumber decide.';

/**
 * A whole job from a few answers: a rectangular plan with its fixtures in place, their groups, and a scheme of each
 * kind, trunk and branch chosen.
 *
 * @throws RangeError where the answers are out of the ranges stated
 */
export function quickStart(answers: QuickStart): Job {
  if (answers.levels.length === 0) throw new RangeError('levels: none came; expected at least one');
  if (answers.levels[answers.kitchenLevel] === undefined) {
    throw new RangeError(
      `kitchenLevel: ${answers.kitchenLevel} came; expected a level from 0 to ${answers.levels.length - 1}`,
    );
  }
  const { source } = answers;
  const [low, high] = source.kind === 'street' ? [source.low, source.high] : [source.cutIn, source.cutOut];
  if (low.si > high.si)
    throw new RangeError(`source: ${low.typed} came as the low of ${high.typed}; exchange them`);
  const grid = gridOf(answers.units);
  const levels = levelsOf(answers);
  const plan = planFor(answers);
  const rooms = plan.rooms.map((placed, index) => furnish(placed, index, plan, levels, grid));
  const job: Job = {
    format: 'hightap-job',
    version: 2,
    name: answers.name,
    note,
    units: answers.units,
    basis: basisOf(answers),
    supply: supplyOf(answers),
    levels,
    places: placesOf(plan, levels, grid),
    groups: rooms.map(({ group }) => group),
    fixtures: [...rooms.flatMap(({ fixtures }) => fixtures), ...hoseBibbs(answers, plan, levels, grid)],
    schemes: [],
    chosen: 'trunk',
  };
  const schemes = layoutKinds.map((kind) => {
    const laid = layOut(job, { kind });
    if (!laid.ok) throw new RangeError(`no ${kind} layout: ${JSON.stringify(laid.missing)}`);
    return laid.scheme;
  });
  return { ...job, schemes };
}

function planFor({ levels, kitchenLevel, iceMaker, rainShower }: QuickStart): Plan {
  const rainLevel = rainShower ? levels.findLastIndex(({ fullBaths }) => fullBaths > 0) : -1;
  return planOf(
    levels.map(({ fullBaths, halfBaths, laundries }, index) => ({
      baths: [
        ...Array.from({ length: fullBaths }, (_, bath) =>
          bathRoom('full-bath', index === rainLevel && bath === 0),
        ),
        ...Array.from({ length: halfBaths }, () => bathRoom('half-bath', false)),
      ],
      laundries: Array.from({ length: laundries }, () => laundry),
      ...(index === kitchenLevel ? { kitchen: kitchen(iceMaker) } : {}),
    })),
  );
}

function levelsOf({ levels, units }: QuickStart): Level[] {
  const grid = gridOf(units);
  const ids = idsFrom(levels.map(({ name }) => name));
  let floor = 0;
  return levels.map(({ name, height }, index) => {
    const elevation = grid.length(floor);
    floor += Math.max(1, grid.snap(height.si));
    return { id: ids[index]!, name, elevation };
  });
}

/** The first word of each name, in small letters; where these are not ids, or not all different, numbers. */
function idsFrom(names: readonly string[]): string[] {
  const words = names.map((name) => name.toLowerCase().split(/[^a-z0-9]+/, 1)[0]!);
  const good = new Set(words).size === words.length && words.every((word) => idPattern.test(word));
  return good ? words : names.map((_, index) => `L${index}`);
}

/** A room's group and its fixtures; both are called by the room's number, `2LAV`. */
function furnish(
  placed: PlacedRoom,
  index: number,
  { rooms }: Plan,
  levels: readonly Level[],
  grid: Grid,
): { group: FixtureGroup; fixtures: Fixture[] } {
  const { room } = placed;
  const level = levels[placed.level]!;
  const alike = rooms.filter((other) => other.level === placed.level && other.room.name === room.name);
  const number = alike.length > 1 ? ` ${alike.indexOf(placed) + 1}` : '';
  const name = `${room.name}${number}, ${level.name}`;
  const group = { id: `G${index + 1}`, name, kind: room.group };
  const fixtures = room.fixtures.map((fixture): Fixture => {
    const { x, y } = placeIn(placed, fixture);
    return {
      id: `${fixture.tag}${index + 1}`,
      name: fixture.name,
      kind: fixture.kind,
      level: level.id,
      room: name,
      use: 'private',
      count: 1,
      x: grid.length(grid.feet(x)),
      y: grid.length(grid.feet(y)),
      ...(fixture.alone ? {} : { group: group.id }),
    };
  });
  return { group, fixtures };
}

/** Hose bibbs stand on the level of the kitchen, the likeliest to meet the ground. */
function hoseBibbs(answers: QuickStart, plan: Plan, levels: readonly Level[], grid: Grid): Fixture[] {
  return Array.from({ length: answers.hoseBibbs }, (_, index) => {
    const { wall, x, y } = hoseBibbAt(index, plan);
    return {
      id: `HB${index + 1}`,
      name: `Hose bibb, ${wall}`,
      kind: 'hose-bibb',
      level: levels[answers.kitchenLevel]!.id,
      room: 'Outdoors',
      use: 'private',
      count: 1,
      x: grid.length(grid.feet(x)),
      y: grid.length(grid.feet(y)),
    };
  });
}

function placesOf(
  { serviceEntry, mechanicalRoom, riser }: Plan,
  levels: readonly Level[],
  grid: Grid,
): Places {
  const at = ({ x, y }: Plan['riser']): { x: Quantity; y: Quantity } => ({
    x: grid.length(grid.feet(x)),
    y: grid.length(grid.feet(y)),
  });
  const level = levels[0]!.id;
  return {
    serviceEntry: { level, ...at(serviceEntry) },
    mechanicalRoom: { level, ...at(mechanicalRoom) },
    risers: [{ id: 'R1', ...at(riser) }],
  };
}

function basisOf({ units, profile }: QuickStart): Basis {
  const [cold, hot] = units === 'us' ? ['60 F', '120 F'] : ['15 C', '49 C'];
  return {
    profile,
    between: 'interpolate',
    friction: 'hazen-williams',
    coldTemperature: quantity(cold!, 'temperature'),
    hotTemperature: quantity(hot!, 'temperature'),
  };
}

function supplyOf({ source, units }: QuickStart): Supply {
  if (source.kind === 'well')
    return { ...source, elevation: quantity(units === 'us' ? '1 ft' : '0.3 m', 'length') };
  const elevation = quantity(units === 'us' ? '-3 ft' : '-0.9 m', 'length');
  return { kind: 'static', elevation, low: source.low, high: source.high };
}

function quantity(typed: string, dimension: QuantityDimension): Quantity {
  const parsed = parseQuantity(typed, dimension);
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.quantity;
}
