import { describe, expect, it } from 'vitest';
import { cold, fahrenheit, fixture, ft, hot, job, run, usualBasis } from '../../jobs/written-job.ts';
import { findingsOf } from './findings-of.ts';

const heater = { device: 'heater', type: 'storage' } as const;
const house = (feet: number, size = '1/2', temperature = 120) =>
  job(
    [fixture('shower', 'shower')],
    [
      run('service', 'street'),
      run('heater', 'service', { end: heater }),
      run('cold', 'service', { size, end: cold('shower') }),
      run('hot', 'heater', { size, length: ft(feet), end: hot('shower') }),
    ],
    { basis: { ...usualBasis, hotTemperature: fahrenheit(temperature) } },
  );

/** IPC 2018, section 607.2: 50 ft. */
describe('hot-length-long', () => {
  it('over 50 ft from heater to fixture', () => {
    expect(findingsOf('hot-length-long', house(51))).toMatchObject([
      { severity: 'error', run: 'hot', fixture: 'shower' },
    ]);
    expect(findingsOf('hot-length-long', house(50))).toEqual([]);
  });

  /** In binary the sum of these is a hair more than 50 ft. */
  it('not for 1 + 1 + 48 ft', () => {
    const { fixtures, schemes } = house(48);
    const runs = schemes[0]!.runs.map((each) => (each.id === 'hot' ? { ...each, from: 'second' } : each));
    const first = run('first', 'heater', { length: ft(1) });
    const second = run('second', 'first', { length: ft(1) });
    expect(findingsOf('hot-length-long', job(fixtures, [...runs, first, second]))).toEqual([]);
  });
});

/** 0.5 gal: 1/2 in PEX holds 0.921 gal per 100 ft, 3/4 in 1.837. */
describe('hot-volume-large', () => {
  it('over half a gallon', () => {
    expect(findingsOf('hot-volume-large', house(28, '3/4'))).toMatchObject([
      { severity: 'note', run: 'hot' },
    ]);
    expect(findingsOf('hot-volume-large', house(27, '3/4'))).toEqual([]);
    expect(findingsOf('hot-volume-large', house(50, '1/2'))).toEqual([]);
  });
});

describe('hot-cold-apart', () => {
  const shower = (feet: number, kind: 'shower' | 'kitchen-sink' = 'shower') =>
    job(
      [fixture('mixer', kind)],
      [
        run('service', 'street'),
        run('heater', 'service', { end: heater }),
        run('cold', 'service', { size: '3/8', length: ft(feet), end: cold('mixer') }),
        run('hot', 'heater', { size: '1', end: hot('mixer') }),
      ],
    );

  /** Over 10 psi, common practice: 3/8 in PEX at 2.5 gpm loses 0.38 psi/ft. */
  it('where the two sides of a mixing valve are left far apart', () => {
    const [found] = findingsOf('hot-cold-apart', shower(40));
    expect(found).toMatchObject({ severity: 'warning', fixture: 'mixer' });
    expect(found!.hot - found!.cold).toBeGreaterThan(found!.limit);
    expect(findingsOf('hot-cold-apart', shower(20))).toEqual([]);
  });

  it('not at a fixture without such a valve', () =>
    expect(findingsOf('hot-cold-apart', shower(60, 'kitchen-sink'))).toEqual([]));
});

describe('hot-water-scalds', () => {
  it('over 120 F', () => {
    expect(findingsOf('hot-water-scalds', house(10, '1/2', 121))).toMatchObject([{ severity: 'note' }]);
    expect(findingsOf('hot-water-scalds', house(10, '1/2', 120))).toEqual([]);
  });
});
