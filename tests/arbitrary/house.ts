import * as fc from 'fast-check';
import type {
  Basis,
  Device,
  Fixture,
  FixtureGroup,
  GroupKind,
  Job,
  Run,
  RunEnd,
} from '../../engine/job/job.ts';
import { type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { profiles } from '../../tables/profiles.ts';
import { cold, fahrenheit, ft, gpm, hot, job, psi, run } from '../jobs/written-job.ts';
import { keysOf } from './run.ts';

const closets = [
  'water-closet-tank',
  'water-closet-one-piece',
  'water-closet-flushometer',
  'water-closet-flushometer-tank',
] as const;

/** What makes each group complete: one fixture of each list. */
const complete: { readonly [kind in GroupKind]: readonly (readonly FixtureKindId[])[] } = {
  'full-bath': [closets, ['lavatory'], ['bathtub-shower', 'bathtub', 'shower']],
  'half-bath': [closets, ['lavatory']],
  kitchen: [['kitchen-sink'], ['dishwasher']],
  laundry: [['clothes-washer'], ['laundry-tray']],
};

const place = fc.nat({ max: 1000 });
const traits = fc.record({
  public: fc.boolean(),
  count: fc.constantFrom(1, 1, 1, 1, 2, 5),
  inlets: fc.constantFrom('as usual', 'as usual', 'as usual', 'cold', 'hot'),
  continuous: fc.constantFrom(undefined, undefined, undefined, undefined, true),
  flow: fc.option(fc.double({ min: 0.2, max: 30, noNaN: true }), { nil: undefined, freq: 5 }),
});

/** Fixtures with their groups: whole ones, ones with a member missing or one too many, and single fixtures. */
const fixturesAndGroups = fc
  .record({
    groups: fc.array(
      fc.record({
        kind: fc.constantFrom(...keysOf(complete)),
        pick: fc.array(place, { minLength: 3, maxLength: 3 }),
        leaveOut: fc.option(place, { nil: undefined, freq: 5 }),
        extra: fc.array(fc.constantFrom(...keysOf(fixtureKinds)), { maxLength: 2 }),
      }),
      { maxLength: 3 },
    ),
    single: fc.array(fc.constantFrom(...keysOf(fixtureKinds)), { minLength: 1, maxLength: 6 }),
    traits: fc.array(traits, { minLength: 24, maxLength: 24 }),
  })
  .map(({ groups: drawn, single, traits: all }) => {
    const groups: FixtureGroup[] = [];
    const kinds: { kind: FixtureKindId; group?: string }[] = [];
    drawn.forEach(({ kind, pick, leaveOut, extra }, index) => {
      const id = `G${index}`;
      groups.push({ id, name: id, kind });
      const members = complete[kind].map((list, at) => list[pick[at]! % list.length]!);
      if (leaveOut !== undefined) members.splice(leaveOut % members.length, 1);
      for (const member of [...members, ...extra]) kinds.push({ kind: member, group: id });
    });
    for (const kind of single) kinds.push({ kind });
    const fixtures = kinds.map(({ kind, group }, index): Fixture => {
      const own = all[index % all.length]!;
      const free = fixtureKinds[kind].inlets === 'both' && own.inlets !== 'as usual';
      return {
        id: `F${index}`,
        name: `F${index}`,
        kind,
        use: own.public ? 'public' : 'private',
        count: own.count,
        ...(group === undefined ? {} : { group }),
        ...(free ? { inlets: own.inlets as 'cold' | 'hot' } : {}),
        ...(own.continuous === undefined ? {} : { continuous: own.continuous }),
        ...(own.flow === undefined ? {} : { flow: gpm(own.flow) }),
      };
    });
    return { groups, fixtures };
  });

const devices: readonly (Device | undefined)[] = [
  undefined,
  undefined,
  { device: 'meter', size: '1' },
  { device: 'reducing-valve', set: psi(55) },
  { device: 'backflow', type: 'double-check' },
  { device: 'softener' },
  { device: 'manifold', size: '1', ports: 12, valved: true },
];

const pipe = fc.record({
  size: fc.constantFrom('3/4', '1', '1-1/4', '2'),
  material: fc.constantFrom('pex' as const, 'copper-l' as const, 'cpvc' as const, 'galvanized' as const),
  feet: fc.double({ min: 0.5, max: 80, noNaN: true }),
  risen: fc.double({ min: -1, max: 1, noNaN: true }),
  ells: fc.nat({ max: 4 }),
  valves: fc.nat({ max: 1 }),
});

const basis: fc.Arbitrary<Basis> = fc
  .record({
    profile: fc.constantFrom(...keysOf(profiles)),
    between: fc.constantFrom('interpolate' as const, 'round-up' as const),
    friction: fc.constantFrom('hazen-williams' as const, 'darcy-weisbach' as const),
    allowance: fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined, freq: 4 }),
    cold: fc.integer({ min: 40, max: 75 }),
    hot: fc.integer({ min: 105, max: 160 }),
  })
  .map(({ profile, between, friction, allowance, cold: coldly, hot: hotly }) => ({
    profile,
    between,
    friction,
    coldTemperature: fahrenheit(coldly),
    hotTemperature: fahrenheit(hotly),
    ...(allowance === undefined ? {} : { fittingAllowancePercent: allowance }),
  }));

/**
 * Valid houses whose fixtures often make the groups of the codes, on a random tree of one scheme: devices with generic
 * curves, static supply, runs in the order of the tree.
 */
export const arbitraryHouse: fc.Arbitrary<Job> = fc
  .record({
    basis,
    drawn: fixturesAndGroups,
    branches: fc.array(
      fc.record({ at: place, hot: fc.boolean(), device: fc.nat({ max: devices.length - 1 }) }),
      {
        maxLength: 8,
      },
    ),
    placing: fc.array(place, { minLength: 48, maxLength: 48 }),
    pipes: fc.array(pipe, { minLength: 12, maxLength: 12 }),
    low: fc.integer({ min: 40, max: 80 }),
    more: fc.integer({ min: 0, max: 40 }),
  })
  .map(({ basis: chosen, drawn: { groups, fixtures }, branches, placing, pipes, low, more }) => {
    const tree: { id: string; from: string; end?: RunEnd }[] = [];
    const add = (from: string, end?: RunEnd): string => {
      const id = `R${tree.length}`;
      tree.push({ id, from, ...(end === undefined ? {} : { end }) });
      return id;
    };
    const service = add('street');
    const sides = { cold: [service], hot: [] as string[] };
    const sidesOf = (fixture: Fixture): ('cold' | 'hot')[] => {
      const inlets = fixture.inlets ?? fixtureKinds[fixture.kind].inlets;
      return inlets === 'both' ? ['cold', 'hot'] : [inlets];
    };
    if (fixtures.some((fixture) => sidesOf(fixture).includes('hot'))) {
      sides.hot.push(add(service, { device: 'heater', type: 'storage' }));
    }
    for (const { at, hot: hotly, device } of branches) {
      const side = hotly && sides.hot.length > 0 ? sides.hot : sides.cold;
      side.push(add(side[at % side.length]!, devices[device]));
    }
    fixtures.forEach((fixture, index) => {
      for (const side of sidesOf(fixture)) {
        const from =
          sides[side][
            placing[(2 * index + (side === 'hot' ? 1 : 0)) % placing.length]! % sides[side].length
          ]!;
        add(from, side === 'hot' ? hot(fixture.id) : cold(fixture.id));
      }
    });
    const runs = tree.map(({ id, from, end }, index): Run => {
      const { size, material, feet, risen, ells, valves } = pipes[index % pipes.length]!;
      return run(id, from, {
        size,
        material,
        length: ft(feet),
        rise: ft(feet * risen),
        fittings: { ell: ells, 'gate-valve': valves },
        ...(end === undefined ? {} : { end }),
      });
    });
    return job(fixtures, runs, {
      basis: chosen,
      groups,
      supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(low + more) },
    });
  });

/** A house and its runs in another order. */
export const houseAndShuffle: fc.Arbitrary<{ house: Job; runs: readonly Run[] }> = arbitraryHouse.chain(
  (house) => {
    const { runs } = house.schemes[0]!;
    return fc.record({
      house: fc.constant(house),
      runs: fc.shuffledSubarray([...runs], { minLength: runs.length }),
    });
  },
);
