import fc from 'fast-check';
import { risingSizes } from '../../engine/hydraulics/rising-sizes.ts';
import type {
  Basis,
  Device,
  Fixture,
  Job,
  Place,
  Quantity,
  Run,
  RunEnd,
  Scheme,
  Supply,
} from '../../engine/job/job.ts';
import { fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { jointsOf, materials } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';
import { arbitraryDemand } from './demand.ts';
import {
  arbitraryFlow,
  arbitraryGradient,
  arbitraryHeight,
  arbitraryLength,
  arbitraryPressure,
  arbitraryTemperature,
  arbitraryVelocity,
  decimalText,
  quantity,
} from './quantity.ts';
import { arbitraryCurve, arbitraryFittings, arbitraryName, keysOf, withOptional } from './run.ts';

export const arbitraryBasis: fc.Arbitrary<Basis> = withOptional(
  {
    profile: fc.constantFrom(...keysOf(profiles)),
    between: fc.constantFrom('interpolate' as const, 'round-up' as const),
    friction: fc.constantFrom('hazen-williams' as const, 'darcy-weisbach' as const),
    coldTemperature: arbitraryTemperature(2, 25),
    hotTemperature: arbitraryTemperature(40, 80),
  },
  {
    demand: arbitraryDemand,
    elevationFactor: arbitraryGradient,
    fittings: fc.constantFrom('equivalent-length' as const, 'loss-coefficient' as const),
    fittingAllowancePercent: fc.integer({ min: 0, max: 200 }),
    velocityCold: arbitraryVelocity,
    velocityHot: arbitraryVelocity,
  },
);

/** Two pressures, the lower one first. */
const twoPressures: fc.Arbitrary<[Quantity, Quantity]> = fc
  .tuple(arbitraryPressure, arbitraryPressure)
  .map(([a, b]) => (a.si <= b.si ? [a, b] : [b, a]));

const arbitrarySupply: fc.Arbitrary<Supply> = fc.oneof(
  fc
    .record({ elevation: arbitraryHeight, pressures: twoPressures })
    .map(({ elevation, pressures: [low, high] }): Supply => ({ kind: 'static', elevation, low, high })),
  fc
    .record({ elevation: arbitraryHeight, pressures: twoPressures, flow: arbitraryFlow })
    .filter(({ pressures: [residual, still] }) => residual.si < still.si)
    .map(({ elevation, pressures: [residual, still], flow }): Supply => {
      return { kind: 'flow-test', elevation, static: still, residual, flow };
    }),
  withOptional({ elevation: arbitraryHeight, pressures: twoPressures }, { pumpFlow: arbitraryFlow }).map(
    ({ elevation, pressures: [cutIn, cutOut], ...pump }): Supply => ({
      kind: 'well',
      elevation,
      cutIn,
      cutOut,
      ...pump,
    }),
  ),
);

const level = fc.record({ name: arbitraryName, elevation: arbitraryHeight });
const group = fc.record({
  name: arbitraryName,
  kind: fc.constantFrom('full-bath' as const, 'half-bath' as const, 'kitchen' as const, 'laundry' as const),
});
const place = fc.nat({ max: 1000 });

const fixture = withOptional(
  {
    name: arbitraryName,
    kind: fc.constantFrom(...keysOf(fixtureKinds)),
    use: fc.constantFrom('private' as const, 'public' as const),
    count: fc.integer({ min: 1, max: 3 }),
  },
  {
    level: place,
    room: arbitraryName,
    inlets: fc.constantFrom('cold' as const, 'hot' as const, 'both' as const),
    height: arbitraryHeight,
    spot: fc.record({ x: arbitraryHeight, y: arbitraryHeight }),
    distance: arbitraryLength,
    flow: arbitraryFlow,
    pressure: arbitraryPressure,
    group: place,
    continuous: fc.boolean(),
  },
);

const spot = fc.record({ level: place, x: arbitraryHeight, y: arbitraryHeight });
const drawnPlaces = fc.record({
  serviceEntry: spot,
  mechanicalRoom: spot,
  risers: fc.array(fc.record({ x: arbitraryHeight, y: arbitraryHeight }), { maxLength: 3 }),
});

/** Every inch material is made in three sizes; of metric ones, the second to the fourth. */
const pipes = keysOf(materials).flatMap((material) => {
  const { rows } = pipeDimensions[material];
  const sizes = Object.hasOwn(rows, '3/4') ? ['3/4', '1', '1-1/4'] : risingSizes(rows).slice(1, 4);
  return sizes.map((size) => ({ material, size }));
});

/** What a run is, its place in the tree aside; it rises no more than it is long. */
const pipe = fc
  .record({
    pipe: fc.constantFrom(...pipes),
    jointAt: fc.option(place, { nil: undefined }),
    length: decimalText(1, 80),
    unit: fc.constantFrom(' ft', "'", ' m'),
    rise: fc.option(fc.record({ share: fc.integer({ min: 0, max: 100 }), down: fc.boolean() }), {
      nil: undefined,
    }),
    fittings: arbitraryFittings.map((all) =>
      all.map(({ kind, count }) => ({ kind, count: Math.min(count, 6) })),
    ),
    note: fc.option(arbitraryName, { nil: undefined }),
  })
  .map(({ pipe, jointAt, length, unit, rise, note, fittings }): Omit<Run, 'id' | 'from'> => {
    const run = { ...pipe, fittings };
    const joints = jointsOf[run.material];
    const risen = rise && ((Number(length) * rise.share) / 100).toFixed(1);
    const riseText =
      risen !== undefined && Number(risen) <= Number(length)
        ? `${rise?.down ? '-' : ''}${risen}${unit}`
        : undefined;
    return {
      ...run,
      length: quantity(`${length}${unit}`, 'length'),
      ...(jointAt === undefined ? {} : { joint: joints[jointAt % joints.length]! }),
      ...(riseText === undefined ? {} : { rise: quantity(riseText, 'length') }),
      ...(note === undefined ? {} : { note }),
    };
  });

const curve = { curve: arbitraryCurve };
const serviceDevice: fc.Arbitrary<Device> = fc.oneof(
  withOptional({ device: fc.constant('meter' as const), size: fc.constantFrom('3/4', '1') }, curve),
  withOptional({ device: fc.constant('reducing-valve' as const), set: arbitraryPressure }, curve),
  withOptional(
    { device: fc.constant('backflow' as const), type: fc.constant('reduced-pressure' as const) },
    curve,
  ),
  withOptional({ device: fc.constant('softener' as const) }, curve),
  withOptional({ device: fc.constant('filter' as const) }, curve),
  fc.record({ device: fc.constant('other' as const), name: arbitraryName, curve: arbitraryCurve }),
);
const heater = withOptional(
  { device: fc.constant('heater' as const), type: fc.constantFrom('storage' as const, 'tankless' as const) },
  curve,
);

/** The runs of one scheme: a service with devices, a cold and a hot tree of branches, a run to every inlet. */
function arbitraryScheme(id: string, fixtures: readonly Fixture[]): fc.Arbitrary<Scheme> {
  const ends = fixtures.flatMap(({ id: fixtureId, kind, inlets = fixtureKinds[kind].inlets }) =>
    (['cold', 'hot'] as const)
      .filter((side) => inlets === 'both' || inlets === side)
      .map((inlet) => ({ fixture: fixtureId, inlet })),
  );
  return fc
    .record({
      name: arbitraryName,
      service: fc.array(serviceDevice, { minLength: 1, maxLength: 4 }),
      heater,
      branches: fc.array(fc.record({ hot: fc.boolean(), at: place }), { maxLength: 6 }),
      inletsAt: fc.array(place, { minLength: ends.length, maxLength: ends.length }),
    })
    .chain(({ name, service, heater: heats, branches, inletsAt }) => {
      const tree: { id: string; from: string; end?: RunEnd }[] = [];
      const add = (from: string, end?: RunEnd): string => {
        const run = { id: `R${tree.length + 1}`, from, ...(end === undefined ? {} : { end }) };
        tree.push(run);
        return run.id;
      };
      const served = service.reduce((from, device) => add(from, device), 'street');
      const sides = {
        cold: [served],
        hot: ends.some(({ inlet }) => inlet === 'hot') ? [add(served, heats)] : [],
      };
      for (const { hot, at } of branches) {
        const side = hot ? sides.hot : sides.cold;
        if (side.length > 0) side.push(add(side[at % side.length]!));
      }
      ends.forEach((end, index) => {
        const side = sides[end.inlet];
        add(side[inletsAt[index]! % side.length]!, end);
      });
      return fc
        .record({
          pipes: fc.array(pipe, { minLength: tree.length, maxLength: tree.length }),
          order: fc.shuffledSubarray([...tree.keys()], { minLength: tree.length }),
        })
        .map(({ pipes, order }) => ({
          id,
          name,
          runs: order.map((at): Run => ({ ...pipes[at]!, ...tree[at]! })),
        }));
    });
}

/**
 * Valid jobs: each scheme is one tree in any order of its runs, every inlet of every fixture is served once, hot
 * inlets from a heater, sizes stand in the tables. Names may hold markup.
 */
export const arbitraryJob: fc.Arbitrary<Job> = fc
  .record({
    levels: fc.array(level, { minLength: 1, maxLength: 3 }),
    groups: fc.array(group, { maxLength: 2 }),
    fixtures: fc.array(fixture, { minLength: 1, maxLength: 8 }),
    placesDrawn: fc.option(drawnPlaces, { nil: undefined }),
    schemeCount: fc.integer({ min: 1, max: 2 }),
    chosenAt: place,
    head: withOptional(
      { name: arbitraryName, units: fc.constantFrom('us' as const, 'si' as const) },
      { note: arbitraryName },
    ),
    basis: arbitraryBasis,
    supply: arbitrarySupply,
  })
  .chain(({ schemeCount, chosenAt, head, basis, supply, ...drawn }) => {
    const levels = drawn.levels.map((each, index) => ({ id: `L${index}`, ...each }));
    const groups = drawn.groups.map((each, index) => ({ id: `G${index}`, ...each }));
    const fixtures = drawn.fixtures.map(
      ({ level: levelAt, group: groupAt, inlets, spot: at, ...each }, index): Fixture => {
        const free = fixtureKinds[each.kind].inlets === 'both';
        return {
          id: `F${index}`,
          ...each,
          ...at,
          ...(levelAt === undefined ? {} : { level: levels[levelAt % levels.length]!.id }),
          ...(groupAt === undefined || groups.length === 0
            ? {}
            : { group: groups[groupAt % groups.length]!.id }),
          ...(inlets === undefined || !free ? {} : { inlets }),
        };
      },
    );
    const on = ({ level: at, ...rest }: { level: number; x: Quantity; y: Quantity }): Place => ({
      level: levels[at % levels.length]!.id,
      ...rest,
    });
    const places = drawn.placesDrawn && {
      serviceEntry: on(drawn.placesDrawn.serviceEntry),
      mechanicalRoom: on(drawn.placesDrawn.mechanicalRoom),
      risers: drawn.placesDrawn.risers.map((each, index) => ({ id: `R${index}`, ...each })),
    };
    const ids = Array.from({ length: schemeCount }, (_, index) => `scheme-${index}`);
    return fc.tuple(...ids.map((id) => arbitraryScheme(id, fixtures))).map(
      (schemes): Job => ({
        format: 'hightap-job',
        version: 2,
        ...head,
        basis,
        supply,
        levels,
        ...(places === undefined ? {} : { places }),
        groups,
        fixtures,
        schemes,
        chosen: ids[chosenAt % ids.length]!,
      }),
    );
  });
