import { describe, expect, it } from 'vitest';
import type { Supply } from '../../../engine/job/job.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { cold, fixture, ft, job, psi, run } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

const at = (pressure: number): { supply: Supply } => ({
  supply: { kind: 'static', elevation: ft(0), low: psi(pressure), high: psi(pressure) },
});
const climb = { branch: { length: ft(50), rise: ft(50) } };

describe('residual-short', () => {
  /** IPC 2018 Table 604.3 asks 20 psi of a close-coupled closet; 50 ft of height take 21.7 psi. */
  it('where less is left than the fixture needs', () => {
    const [found, ...others] = findingsOf('residual-short', quietBut(climb, [], at(40)));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ severity: 'error', fixture: 'closet', inlet: 'cold', run: 'branch' });
    expect(found!.required).toBeCloseTo(toSI(20, 'psi'), 6);
    expect(found!.residual).toBeLessThan(found!.required);
  });

  it('not where enough is left', () => {
    expect(findingsOf('residual-short', quietBut(climb, [], at(60)))).toEqual([]);
  });

  it('by the maker’s need in place of the code’s', () => {
    const needy = [fixture('closet', 'water-closet-tank', { pressure: psi(57.8) })];
    const found = findingsOf('residual-short', quietBut({}, [], { fixtures: needy, ...at(58) }));
    expect(found).toHaveLength(1);
    expect(findingsOf('residual-short', quietBut({}, [], at(58)))).toEqual([]);
  });
});

describe('what would mend it', () => {
  const thin = (low: number) =>
    job(
      [fixture('closet', 'water-closet-tank')],
      [
        run('service', 'street', { size: '1', length: ft(20), end: { device: 'meter', size: '5/8' } }),
        run('thin', 'service', { size: '3/8', length: ft(60) }),
        run('branch', 'thin', { size: '3/8', length: ft(10), end: cold('closet') }),
      ],
      at(low),
    );

  it('is the change on the shortest pipe that suffices', () => {
    // 3/8 in PEX at 3 gpm loses about 0.54 psi/ft: 32 psi in the long pipe, 5 in the short one.
    const [found] = findingsOf('residual-short', thin(55.5));
    expect(found?.mend).toMatchObject({ do: 'larger-pipe', run: 'branch', size: '1/2', mends: true });
  });

  it('is the pipe that gains most where none suffices', () => {
    const [found] = findingsOf('residual-short', thin(22));
    expect(found?.mend).toMatchObject({ do: 'larger-pipe', run: 'thin', size: '1/2', mends: false });
  });
});

describe('pressure-negative', () => {
  it('where the height takes more than the street gives', () => {
    const found = findingsOf('pressure-negative', quietBut(climb, [], at(20)));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ severity: 'error', run: 'branch' });
    expect(found[0]!.pressure).toBeLessThan(0);
  });

  it('not where something is left', () =>
    expect(findingsOf('pressure-negative', quietBut(climb, [], at(28)))).toEqual([]));
});
