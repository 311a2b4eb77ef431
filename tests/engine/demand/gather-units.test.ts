import { describe, expect, it } from 'vitest';
import type { Fixture, FixtureGroup, Run } from '../../../engine/job/job.ts';
import { solve } from '../../../engine/network/solve.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { at, cold, fixture, gpm, hot, job, networkOf, run, usualBasis } from '../../jobs/written-job.ts';

const bath: FixtureGroup = { id: 'bath', name: 'Bath', kind: 'full-bath' };
const members: Fixture[] = [
  fixture('closet', 'water-closet-tank', { group: 'bath' }),
  fixture('basin', 'lavatory', { group: 'bath' }),
  fixture('tub', 'bathtub-shower', { group: 'bath' }),
];
/** Cold and hot trunks of a bathroom: closet, basin and tub, in this order along each. */
const piping: Run[] = [
  run('service', 'street'),
  run('heater', 'service', { end: { device: 'heater', type: 'storage' } }),
  run('cold-trunk', 'service'),
  run('closet', 'cold-trunk', { end: cold('closet') }),
  run('cold-rest', 'cold-trunk'),
  run('basin-cold', 'cold-rest', { end: cold('basin') }),
  run('tub-cold', 'cold-rest', { end: cold('tub') }),
  run('basin-hot', 'heater', { end: hot('basin') }),
  run('tub-hot', 'heater', { end: hot('tub') }),
];
const unitsIn = (fixtures: readonly Fixture[], groups: readonly FixtureGroup[], runs = piping) => {
  const network = networkOf(job(fixtures, runs, { groups }));
  const { units } = solve(network);
  return (id: string): number => at(network, units, id);
};

/** IPC 2018 Table E103.3(2): closet 2.2; lavatory 0.5, 0.5, 0.7; bathtub 1, 1, 1.4; bathroom group 2.7, 1.5, 3.6. */
describe('without a group', () => {
  const units = unitsIn(
    members.map(({ group: _, ...each }) => each),
    [],
  );

  it('the cold side counts cold values', () => {
    expect(units('cold-rest')).toBeCloseTo(0.5 + 1, 9);
    expect(units('cold-trunk')).toBeCloseTo(2.2 + 0.5 + 1, 9);
  });
  it('the hot side counts hot values', () => expect(units('heater')).toBeCloseTo(0.5 + 1, 9));
  it('the service counts each fixture once, by its total', () => {
    expect(units('service')).toBeCloseTo(2.2 + 0.7 + 1.4, 9);
  });
});

describe('with a bathroom group', () => {
  const units = unitsIn(members, [bath]);

  it('a run that serves part of it keeps the fixtures’ own values', () => {
    expect(units('cold-rest')).toBeCloseTo(1.5, 9);
    expect(units('tub-cold')).toBeCloseTo(1, 9);
  });
  it('a run that serves all of its cold takes the group’s cold value', () =>
    expect(units('cold-trunk')).toBeCloseTo(2.7, 9));
  it('a run that serves all of its hot takes the group’s hot value', () =>
    expect(units('heater')).toBeCloseTo(1.5, 9));
  it('the run that serves all of it takes the group’s total', () =>
    expect(units('service')).toBeCloseTo(3.6, 9));
});

describe('what is over, missing or unusual in a group', () => {
  const extra = fixture('spare', 'shower', { group: 'bath' });
  const more = [
    ...piping,
    run('spare-cold', 'cold-rest', { end: cold('spare') }),
    run('spare-hot', 'heater', { end: hot('spare') }),
  ];

  it('counts a second bath on its own', () => {
    const units = unitsIn([...members, extra], [bath], more);
    expect(units('cold-trunk')).toBeCloseTo(2.7 + 1, 9);
    expect(units('service')).toBeCloseTo(3.6 + 1.4, 9);
  });

  it('takes the bath that the schedule names first, whatever the order of the runs', () => {
    const hand = fixture('spare', 'shower', { group: 'bath', use: 'private' });
    const lounge = { ...members[2]!, use: 'private' as const };
    for (const runs of [more, [...more].reverse()]) {
      const units = unitsIn([members[0]!, members[1]!, lounge, hand], [bath], runs);
      expect(units('service')).toBeCloseTo(3.6 + 1.4, 9);
    }
  });

  it('makes no group of an incomplete one', () => {
    const units = unitsIn(
      members.map((each) => (each.id === 'tub' ? { ...each, kind: 'kitchen-sink' as const } : each)),
      [bath],
    );
    expect(units('service')).toBeCloseTo(2.2 + 0.7 + 1.4, 9);
  });

  it('makes no private bathroom of public fixtures: 5 + 2 + 4', () => {
    const units = unitsIn(
      members.map((each) => ({ ...each, use: 'public' as const })),
      [bath],
    );
    expect(units('service')).toBeCloseTo(11, 9);
  });

  it('makes no group where a member is piped on one side only', () => {
    const fixtures = members.map((each) => (each.id === 'tub' ? { ...each, inlets: 'cold' as const } : each));
    const runs = piping.filter(({ id }) => id !== 'tub-hot');
    const units = unitsIn(fixtures, [bath], runs);
    expect(units('heater')).toBeCloseTo(0.5, 9);
    expect(units('cold-trunk')).toBeCloseTo(2.2 + 0.5 + 1.4, 9);
  });
});

describe('identical fixtures', () => {
  it('count as often as they are', () => {
    const fixtures = [fixture('closets', 'water-closet-tank', { use: 'public', count: 4 })];
    const units = unitsIn(fixtures, [], [run('service', 'street', { end: cold('closets') })]);
    expect(units('service')).toBeCloseTo(20, 9);
  });
});

describe('design flow', () => {
  const flowsOf = (fixtures: readonly Fixture[], runs: readonly Run[], between = usualBasis.between) => {
    const network = networkOf(job(fixtures, runs, { basis: { between } }));
    const { flow } = solve(network);
    return (id: string): number => fromSI(at(network, flow, id), 'gpm');
  };

  it('of one fixture is its own: the table speaks of several at once', () => {
    expect(
      flowsOf([fixture('a', 'water-closet-tank')], [run('A', 'street', { end: cold('a') })])('A'),
    ).toBeCloseTo(3, 9);
  });

  const two = [
    run('service', 'street'),
    run('A', 'service', { end: cold('a') }),
    run('B', 'service', { end: cold('b') }),
  ];

  /** 2.2 + 2.2 = 4.4 units: 8 + (9.4 - 8) x 0.4; rounded up, the row of 5 units. */
  it('of several is by the tank column', () => {
    const closets = [fixture('a', 'water-closet-tank'), fixture('b', 'water-closet-tank')];
    expect(flowsOf(closets, two)('service')).toBeCloseTo(8.56, 9);
    expect(flowsOf(closets, two, 'round-up')('service')).toBeCloseTo(9.4, 9);
  });

  /** 0.25 + 0.25 units are below the first row: 0.75 + 0.75 gpm. */
  it('below the first row is the sum of own flows', () => {
    const fountains = [fixture('a', 'drinking-fountain'), fixture('b', 'drinking-fountain')];
    expect(flowsOf(fountains, two)('service')).toBeCloseTo(1.5, 9);
  });

  /** 0.25 + 0.25 units again, but 2 + 2 gpm: no more than the 3 gpm of the first row. */
  it('and no more than the first row’s flow', () => {
    const fountains = ['a', 'b'].map((id) => fixture(id, 'drinking-fountain', { flow: gpm(2) }));
    expect(flowsOf(fountains, two)('service')).toBeCloseTo(3, 9);
  });

  it('is never less than the largest fixture’s', () => {
    const fixtures = [
      fixture('a', 'lavatory', { inlets: 'cold' }),
      fixture('b', 'lavatory', { inlets: 'cold', flow: gpm(9) }),
    ];
    expect(flowsOf(fixtures, two)('service')).toBeCloseTo(9, 9);
  });

  /** 10 units of a flushometer closet and 2.2 of a tank closet: 28.6 gpm at 12 units, 29.4 at 13. */
  it('takes the valve column where a flushometer valve is served', () => {
    const fixtures = [
      fixture('a', 'water-closet-flushometer', { use: 'public' }),
      fixture('b', 'water-closet-tank'),
    ];
    expect(flowsOf(fixtures, two)('service')).toBeCloseTo(28.6 + 0.2 * (29.4 - 28.6), 9);
  });

  it('keeps the tank column where the flushometer valve counts as flow', () => {
    const fixtures = [
      fixture('a', 'urinal-flushometer', { continuous: true, flow: gpm(1) }),
      fixture('b', 'lavatory', { inlets: 'cold', count: 7 }),
    ];
    // 7 x 0.7 = 4.9 units: 8 + 1.4 x 0.9 = 9.26, and 1 gpm that runs for long.
    expect(flowsOf(fixtures, two)('service')).toBeCloseTo(10.26, 9);
  });

  /** A closet’s 3 gpm and the 5 gpm of a hose bibb, which the IPC gives no units. */
  it('adds what runs for long', () => {
    const fixtures = [fixture('a', 'water-closet-tank'), fixture('b', 'hose-bibb')];
    expect(flowsOf(fixtures, two)('service')).toBeCloseTo(8, 9);
  });

  it('counts a fixture that runs for long once, though both of its inlets are served', () => {
    const fixtures = [fixture('a', 'kitchen-sink', { continuous: true, flow: gpm(2) })];
    const flows = flowsOf(fixtures, [
      run('service', 'street'),
      run('heater', 'service', { end: { device: 'heater', type: 'storage' } }),
      run('C', 'service', { end: cold('a') }),
      run('H', 'heater', { end: hot('a') }),
    ]);
    expect(flows('service')).toBeCloseTo(2, 9);
    expect(flows('C')).toBeCloseTo(2, 9);
    expect(flows('H')).toBeCloseTo(2, 9);
  });
});
