import { describe, expect, it } from 'vitest';
import type { Run, Supply } from '../../../engine/job/job.ts';
import { fromSI } from '../../../tables/units/definitions.ts';
import { cold, fixture, ft, gpm, job, psi, run } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

describe('service-small', () => {
  /** IPC 2018, section 603.1: 3/4 in. */
  it('under 3/4 in', () => {
    expect(findingsOf('service-small', quietBut({ service: { size: '5/8' } }))).toMatchObject([
      { severity: 'error', run: 'service', size: '5/8', least: '3/4' },
    ]);
    expect(findingsOf('service-small', quietBut({ service: { size: '3/4' } }))).toEqual([]);
  });
});

/** IPC 2018 Table 604.5: bathtub 1/2 in, tank closet 3/8 in. */
describe('fixture-supply-small', () => {
  const tub = [fixture('closet', 'bathtub', { inlets: 'cold' })];

  it('under the size of the table', () => {
    expect(
      findingsOf('fixture-supply-small', quietBut({ branch: { size: '3/8' } }, [], { fixtures: tub })),
    ).toMatchObject([{ severity: 'error', run: 'branch', fixture: 'closet', size: '3/8', least: '1/2' }]);
  });

  it('not at the size of the table', () => {
    expect(findingsOf('fixture-supply-small', quietBut({}, [], { fixtures: tub }))).toEqual([]);
    expect(findingsOf('fixture-supply-small', quietBut({ branch: { size: '3/8' } }))).toEqual([]);
  });
});

/** IPC 2018 Table 604.5, footnote a: a home run of at most 60 ft, with 35 psi, may be smaller. */
describe('home runs', () => {
  const house = (feet: number, low: number, size = '3/8') => {
    const supply: Supply = { kind: 'static', elevation: ft(0), low: psi(low), high: psi(70) };
    return job(
      [fixture('tub', 'bathtub', { inlets: 'cold' })],
      [
        run('service', 'street', { end: { device: 'manifold', size: '1', ports: 4, valved: true } }),
        run('home', 'service', { size, length: ft(feet), end: cold('tub') }),
      ],
      { supply },
    );
  };

  it('may be smaller than the table of supplies', () => {
    for (const code of ['fixture-supply-small', 'home-run-long', 'home-run-pressure-low'] as const) {
      expect(findingsOf(code, house(60, 35))).toEqual([]);
    }
  });

  it('home-run-long: over 60 ft', () => {
    expect(findingsOf('home-run-long', house(61, 50))).toMatchObject([{ run: 'home' }]);
    expect(findingsOf('home-run-long', house(61, 50, '1/2'))).toEqual([]);
  });

  it('home-run-pressure-low: under 35 psi', () => {
    expect(findingsOf('home-run-pressure-low', house(20, 34))).toMatchObject([{ run: 'home' }]);
    expect(findingsOf('home-run-pressure-low', house(20, 34, '1/2'))).toEqual([]);
  });
});

/** IRC 2021, P2903.8.2, from memory: any line may be 3/8 in up to 60 ft and from 40 psi. IPC 604.5 a: tub, sink, shower. */
describe('the line of a lavatory, whose supply may be 3/8 in anyway', () => {
  const house = (feet: number, low: number, profile: 'irc-2021' | 'ipc-2018', split: boolean) =>
    job(
      [fixture('basin', 'lavatory', { inlets: 'cold' })],
      [
        run('service', 'street', { end: { device: 'manifold', size: '1', ports: 4, valved: true } }),
        ...(split
          ? [
              run('home', 'service', { size: '3/8', length: ft(feet - 1) }),
              run('stub', 'home', { size: '3/8', length: ft(1), end: { device: 'arrester', size: 'A' } }),
              run('end', 'home', { size: '3/8', length: ft(1), end: cold('basin') }),
            ]
          : [run('end', 'service', { size: '3/8', length: ft(feet), end: cold('basin') })]),
      ],
      {
        basis: { profile },
        supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(70) },
      },
    );

  it.each([false, true])('is held to 60 ft and 40 psi by the IRC, split by an arrester: %s', (split) => {
    expect(findingsOf('home-run-long', house(61, 50, 'irc-2021', split))).toMatchObject([{ run: 'end' }]);
    expect(findingsOf('home-run-long', house(60, 50, 'irc-2021', split))).toEqual([]);
    expect(findingsOf('home-run-pressure-low', house(20, 39, 'irc-2021', split))).toHaveLength(1);
    expect(findingsOf('home-run-pressure-low', house(20, 40, 'irc-2021', split))).toEqual([]);
  });

  it('is not named by the IPC, whose table it meets', () => {
    for (const code of ['home-run-long', 'home-run-pressure-low', 'fixture-supply-small'] as const) {
      expect(findingsOf(code, house(61, 30, 'ipc-2018', false))).toEqual([]);
    }
  });
});

/** IPC 2018 Table 604.10.1, from memory: a 3/4 in manifold passes 11 gpm. */
describe('manifolds', () => {
  const house = (flow: number, ports: number, lines: number) => {
    const ids = Array.from({ length: lines }, (_, index) => `basin-${index}`);
    const runs: Run[] = [
      run('service', 'street', { end: { device: 'manifold', size: '3/4', ports, valved: true } }),
      ...ids.map((id) => run(id, 'service', { end: cold(id) })),
    ];
    return job(
      ids.map((id) => fixture(id, 'hose-bibb', { flow: gpm(flow / lines) })),
      runs,
    );
  };

  it('manifold-over-capacity: over 11 gpm', () => {
    const [found] = findingsOf('manifold-over-capacity', house(11.1, 4, 2));
    expect(found).toMatchObject({ severity: 'error', run: 'service', size: '3/4' });
    expect(fromSI(found!.limit, 'gpm')).toBeCloseTo(11, 9);
    expect(findingsOf('manifold-over-capacity', house(10.9, 4, 2))).toEqual([]);
  });

  it('manifold-ports-short: more lines than ports', () => {
    expect(findingsOf('manifold-ports-short', house(4, 2, 3))).toMatchObject([
      { run: 'service', ports: 2, used: 3 },
    ]);
    expect(findingsOf('manifold-ports-short', house(4, 3, 3))).toEqual([]);
  });
});
