import { describe, expect, it } from 'vitest';
import type { Fixture, Job, Run } from '../../../engine/job/job.ts';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import type { DefectCode } from '../../../engine/network/defect.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { at, cold, fixture, ft, gpm, hot, job, networkOf, psi, run, street } from '../../jobs/written-job.ts';

const basin = fixture('basin', 'lavatory');
const piping: Run[] = [
  run('service', 'street'),
  run('heater', 'service', { end: { device: 'heater', type: 'storage' } }),
  run('cold', 'service', { end: cold('basin') }),
  run('hot', 'heater', { end: hot('basin') }),
];
const good = job([basin], piping);
const withRuns = (runs: readonly Run[], fixtures: readonly Fixture[] = [basin]): Job => ({
  ...good,
  fixtures,
  schemes: [{ ...good.schemes[0]!, runs }],
});
const change = (id: string, changes: Partial<Run>): Run[] =>
  piping.map((each) => (each.id === id ? { ...each, ...changes } : each));

const codesOf = (written: Job, scheme?: string): DefectCode[] => {
  const built = buildNetwork(written, scheme);
  return built.ok ? [] : built.defects.map(({ code }) => code);
};

describe('a good job', () => {
  it('has no defects', () => expect(codesOf(good)).toEqual([]));
});

describe('each defect, and nothing else', () => {
  it.each<[DefectCode, Job]>([
    ['no-runs', withRuns([], [])],
    ['run-twice', withRuns([...piping, run('service', 'service')])],
    ['run-named-street', withRuns([...piping, run('street', 'service')])],
    ['fixture-twice', { ...good, fixtures: [basin, fixture('basin', 'lavatory')] }],
    [
      'level-twice',
      {
        ...good,
        levels: [
          { id: 'L', name: 'L', elevation: ft(0) },
          { id: 'L', name: 'M', elevation: ft(9) },
        ],
      },
    ],
    [
      'group-twice',
      {
        ...good,
        groups: [
          { id: 'G', name: 'G', kind: 'kitchen' },
          { id: 'G', name: 'H', kind: 'laundry' },
        ],
      },
    ],
    ['scheme-twice', { ...good, schemes: [good.schemes[0]!, good.schemes[0]!] }],
    ['several-services', withRuns([...piping, run('other', 'street')])],
    ['parent-missing', withRuns([...piping, run('lost', 'nowhere')])],
    ['loop', withRuns([...piping, run('one', 'two'), run('two', 'one')])],
    ['unknown-size', withRuns(change('cold', { size: '7/8' }))],
    [
      'unknown-device-size',
      withRuns([...piping, run('meter', 'service', { end: { device: 'meter', size: '7/8' } })]),
    ],
    ['joint-mismatch', withRuns(change('cold', { joint: 'solder' }))],
    ['rise-over-length', withRuns(change('cold', { rise: ft(-10.1) }))],
    ['fixture-missing', withRuns([...piping, run('more', 'service', { end: cold('nobody') })])],
    ['inlet-served-twice', withRuns([...piping, run('again', 'service', { end: cold('basin') })])],
    ['hot-without-heater', withRuns(change('hot', { from: 'service' }))],
    ['cold-below-heater', withRuns(change('cold', { from: 'heater' }))],
    ['run-after-end', withRuns([...piping, run('on', 'cold')])],
    [
      'run-after-end',
      withRuns([...piping, run('tank', 'service', { end: { device: 'expansion-tank' } }), run('on', 'tank')]),
    ],
    ['level-missing', { ...good, fixtures: [{ ...basin, level: 'attic' }] }],
    ['group-missing', { ...good, fixtures: [{ ...basin, group: 'bath' }] }],
    ['pressures-inverted', { ...good, supply: { ...street, kind: 'static', low: psi(70), high: psi(60) } }],
    [
      'pressures-inverted',
      { ...good, supply: { kind: 'well', elevation: ft(0), cutIn: psi(50), cutOut: psi(30) } },
    ],
    [
      'pressures-inverted',
      {
        ...good,
        supply: {
          kind: 'flow-test',
          elevation: ft(0),
          static: psi(50),
          residual: psi(40),
          flow: gpm(30),
          low: psi(55),
        },
      },
    ],
    [
      'flow-test-inverted',
      {
        ...good,
        supply: { kind: 'flow-test', elevation: ft(0), static: psi(50), residual: psi(60), flow: gpm(30) },
      },
    ],
    [
      'flow-test-inverted',
      {
        ...good,
        supply: { kind: 'flow-test', elevation: ft(0), static: psi(60), residual: psi(50), flow: gpm(0) },
      },
    ],
  ])('%s', (code, written) => expect(codesOf(written)).toEqual([code]));

  it('no-such-scheme', () => expect(codesOf(good, 'other')).toEqual(['no-such-scheme']));

  it('inlet-missing: a hot pipe to a fixture that has no hot inlet', () => {
    const closet = fixture('basin', 'water-closet-tank');
    expect(codesOf({ ...good, fixtures: [closet] })).toEqual(['inlet-missing']);
  });

  it('inlet-unserved: a fixture that no pipe reaches', () => {
    expect(codesOf({ ...good, fixtures: [basin, fixture('closet', 'water-closet-tank')] })).toEqual([
      'inlet-unserved',
    ]);
  });

  it('all at once, where there are several', () => {
    const runs = [...change('cold', { size: '7/8', rise: ft(11) }), run('on', 'hot')];
    expect(codesOf({ ...withRuns(runs), fixtures: [{ ...basin, level: 'attic' }] }).sort()).toEqual(
      ['level-missing', 'rise-over-length', 'run-after-end', 'unknown-size'].sort(),
    );
  });
});

describe('the arrays of a network', () => {
  it('mark as hot what comes through a heater, not the heater’s own supply', () => {
    const network = networkOf(good);
    expect(['service', 'heater', 'cold', 'hot'].map((id) => at(network, network.hot, id))).toEqual([
      0, 0, 0, 1,
    ]);
  });

  it('add rises up from the height of the supply', () => {
    const network = networkOf({
      ...withRuns(change('cold', { rise: ft(4) })),
      supply: { ...street, kind: 'static', elevation: ft(-5), low: psi(60), high: psi(60) },
    });
    expect(at(network, network.elevation, 'cold')).toBeCloseTo(toSI(-1, 'ft'), 12);
  });

  /** 3/4 in brass insert: two ells of 9.4 ft and a coupling of 0.6 ft. */
  it('sum the lengths of fittings', () => {
    const network = networkOf(
      withRuns(
        change('cold', {
          size: '3/4',
          fittings: [
            { kind: 'ell', count: 2 },
            { kind: 'coupling', count: 1 },
          ],
        }),
      ),
    );
    expect(at(network, network.fittingLength, 'cold')).toBeCloseTo(toSI(19.4, 'ft'), 12);
    expect(at(network, network.fittingSquare, 'cold')).toBe(0);
  });

  /** K = 10 of a globe valve in 1 in CPVC, for which no table prints a length: K rho / (2 A²). */
  it('carry K as a loss by the square of the flow', () => {
    const network = networkOf(
      withRuns(change('cold', { material: 'cpvc', fittings: [{ kind: 'globe-valve', count: 1 }] })),
    );
    const area = (Math.PI / 4) * toSI(0.901, 'in') ** 2;
    expect(at(network, network.fittingLength, 'cold')).toBe(0);
    expect(at(network, network.fittingSquare, 'cold') / ((10 * 999.15452) / (2 * area * area))).toBeCloseTo(
      1,
      6,
    );
  });

  it('take an allowance in place of the fittings: 50 % of 10 ft', () => {
    const written = withRuns(change('cold', { fittings: [{ kind: 'ell', count: 9 }] }));
    const network = networkOf({ ...written, basis: { ...written.basis, fittingAllowancePercent: 50 } });
    expect(at(network, network.fittingLength, 'cold')).toBeCloseTo(toSI(5, 'ft'), 12);
  });
});
