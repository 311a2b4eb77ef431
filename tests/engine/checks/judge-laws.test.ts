import { describe, expect, it } from 'vitest';
import { cold, fahrenheit, fixture, ft, job, run, usualBasis } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

describe('laws-apart', () => {
  const pipe = (size: string, material: 'pex' | 'copper-l', temperature: number) =>
    job(
      [fixture('closet', 'water-closet-tank')],
      [run('only', 'street', { size, material, length: ft(80), end: cold('closet') })],
      {
        basis: { ...usualBasis, coldTemperature: fahrenheit(temperature) },
      },
    );

  /**
   * 3 gpm in 1/2 in PEX: Darcy-Weisbach at 60 F is 10.6 % over Hazen-Williams with C = 150 (both compared with manual A,
   * 2014); at 75 F it is about 7 % over. 1/2 in copper L with C = 140 at 60 F: 1 % under.
   */
  it('where the two laws part by more than a tenth', () => {
    const [found] = findingsOf('laws-apart', pipe('1/2', 'pex', 60));
    expect(found).toMatchObject({ severity: 'note', run: 'only' });
    expect(found!.darcyWeisbach / found!.hazenWilliams).toBeCloseTo(1.106, 2);
  });

  it('not where they are near', () => {
    expect(findingsOf('laws-apart', pipe('1/2', 'pex', 75))).toEqual([]);
    expect(findingsOf('laws-apart', pipe('1/2', 'copper-l', 60))).toEqual([]);
  });
});

describe('height-mismatch', () => {
  const levels = [{ id: 'up', name: 'Upstairs', elevation: ft(9) }];
  const house = (rise: number, height: number | undefined) => {
    const closet = fixture('closet', 'water-closet-tank', {
      level: 'up',
      ...(height === undefined ? {} : { height: ft(height) }),
    });
    return quietBut({ branch: { length: ft(20), rise: ft(rise) } }, [], { fixtures: [closet], levels });
  };

  it('where the rises lead to another height than the schedule has', () => {
    expect(findingsOf('height-mismatch', house(8.4, 0.5))).toMatchObject([
      { severity: 'warning', run: 'branch', fixture: 'closet' },
    ]);
    expect(findingsOf('height-mismatch', house(10.6, 0.5))).toHaveLength(1);
  });

  it('not within a foot, nor where the schedule says no height', () => {
    expect(findingsOf('height-mismatch', house(8.6, 0.5))).toEqual([]);
    expect(findingsOf('height-mismatch', house(0, undefined))).toEqual([]);
  });
});

describe('dead-end', () => {
  it('at a run that ends in nothing', () => {
    expect(findingsOf('dead-end', quietBut({}, [run('stub', 'service')]))).toMatchObject([
      { severity: 'note', run: 'stub' },
    ]);
  });

  it('not at a fixture, a device, or where the pipe goes on', () => {
    const tank = run('tank', 'service', { end: { device: 'expansion-tank' } });
    expect(findingsOf('dead-end', quietBut({}, [tank]))).toEqual([]);
  });
});
