import { describe, expect, it } from 'vitest';
import { cold, fixture, ft, hot, job, run } from '../../jobs/written-job.ts';
import { findingsOf } from './findings-of.ts';

const arrester = (size: string) => ({ device: 'arrester', size }) as const;

/** A dishwasher 8 ft behind the run that has the arrester, at the end of a branch of `feet`. */
const kitchen = (feet: number, withArrester: boolean, kind: 'dishwasher' | 'lavatory' = 'dishwasher') =>
  job(
    [fixture('machine', kind, { inlets: 'hot' })],
    [
      run('heater', 'street', { end: { device: 'heater', type: 'storage' } }),
      run('trunk', 'heater', { length: ft(5) }),
      run('machine', 'trunk', { length: ft(feet), end: hot('machine') }),
      ...(withArrester ? [run('arrester', 'trunk', { length: ft(1), end: arrester('A') })] : []),
    ],
  );

describe('arrester-missing', () => {
  it('at a quick-closing valve with none', () => {
    expect(findingsOf('arrester-missing', kitchen(8, false))).toMatchObject([
      {
        severity: 'warning',
        run: 'machine',
        fixture: 'machine',
        // A run off `machine` itself would go on from where its fixture is.
        mend: { do: 'add-arrester', run: 'trunk' },
      },
    ]);
  });

  it('not with one within 20 ft of pipe, the arrester’s own foot included', () => {
    expect(findingsOf('arrester-missing', kitchen(18.9, true))).toEqual([]);
    expect(findingsOf('arrester-missing', kitchen(19.1, true))).toHaveLength(1);
  });

  it('not at a fixture that closes slowly', () => {
    expect(findingsOf('arrester-missing', kitchen(8, false, 'lavatory'))).toEqual([]);
  });
});

/** Size A serves up to 11 units, B up to 32 (from memory). A public tank closet has 5 units in the IPC. */
describe('arrester-small', () => {
  const hall = (closets: number, size: string) =>
    job(
      [fixture('closets', 'water-closet-tank', { use: 'public', count: closets })],
      [
        run('service', 'street'),
        run('closets', 'service', { end: cold('closets') }),
        run('arrester', 'service', { length: ft(1), end: arrester(size) }),
      ],
    );

  it('for more units than its size serves', () => {
    expect(findingsOf('arrester-small', hall(3, 'A'))).toMatchObject([
      {
        severity: 'warning',
        run: 'arrester',
        size: 'A',
        least: 'B',
        units: 15,
      },
    ]);
  });

  it('not for as many as it serves', () => {
    expect(findingsOf('arrester-small', hall(2, 'A'))).toEqual([]);
    expect(findingsOf('arrester-small', hall(3, 'B'))).toEqual([]);
  });

  it('offers no size where none is large enough: 70 closets have 350 units', () => {
    const [found] = findingsOf('arrester-small', hall(70, 'F'));
    expect(found).toMatchObject({ size: 'F', units: 350 });
    expect(found).not.toHaveProperty('least');
  });
});
