import { describe, expect, it } from 'vitest';
import type { Run, Supply } from '../../../engine/job/job.ts';
import { toSI } from '../../../tables/units/definitions.ts';
import { fahrenheit, fixture, ft, hot, job, psi, run, usualBasis } from '../../jobs/written-job.ts';
import { findingsOf, quietBut } from './findings-of.ts';

const high = (pressure: number, elevation = 0): { supply: Supply } => ({
  supply: { kind: 'static', elevation: ft(elevation), low: psi(50), high: psi(pressure) },
});

/** IPC 2018, section 604.8: 80 psi. */
describe('static-high', () => {
  it('where the day’s high is over 80 psi', () => {
    const [found, ...others] = findingsOf('static-high', quietBut({}, [], high(80.5)));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ severity: 'error', run: 'branch', mend: { do: 'add-reducing-valve' } });
    expect(found!.pressure).toBeCloseTo(toSI(80.5, 'psi'), 3);
  });

  it('not at 80 psi', () => expect(findingsOf('static-high', quietBut({}, [], high(80)))).toEqual([]));

  it('not by the night’s pressure, and where the fixture stands: 10 ft down add 4.3 psi', () => {
    const down = { branch: { length: ft(10), rise: ft(-10) } };
    expect(findingsOf('static-high', quietBut(down, [], high(77)))).toHaveLength(1);
    expect(findingsOf('static-high', quietBut(down, [], high(75)))).toEqual([]);
  });

  it('not behind a reducing valve', () => {
    const valve = { service: { end: { device: 'reducing-valve', set: psi(60) } } } as const;
    expect(findingsOf('static-high', quietBut(valve, [], high(110)))).toEqual([]);
  });
});

/** PEX SDR-9: 160 psi at 73 F, 100 psi at 180 F; CPVC SDR-11: 100 psi at 180 F, where its rating ends. */
describe('rating', () => {
  const house = (material: Run['material'], temperature: number, pressure: number, rise = 0) =>
    job(
      [fixture('sink', 'kitchen-sink', { inlets: 'hot' })],
      [
        run('service', 'street', { material: 'copper-l', end: { device: 'heater', type: 'storage' } }),
        run('hot', 'service', { size: '1/2', material, rise: ft(rise), end: hot('sink') }),
      ],
      { ...high(pressure), basis: { ...usualBasis, hotTemperature: fahrenheit(temperature) } },
    );

  it('rating-exceeded: hot PEX at 180 F and 101 psi', () => {
    const [found, ...others] = findingsOf('rating-exceeded', house('pex', 180, 101));
    expect(others).toEqual([]);
    expect(found).toMatchObject({ severity: 'error', run: 'hot' });
    expect(found!.limit).toBeCloseTo(toSI(100, 'psi'), 3);
  });

  it('not at 99 psi, and not at 101 psi when cooler', () => {
    expect(findingsOf('rating-exceeded', house('pex', 180, 99))).toEqual([]);
    expect(findingsOf('rating-exceeded', house('pex', 170, 101))).toEqual([]);
  });

  it('by the pressure at the lower end of the pipe: 8 ft of water at 180 F are 3.4 psi', () => {
    expect(findingsOf('rating-exceeded', house('pex', 180, 97, -8))).toHaveLength(1);
    expect(findingsOf('rating-exceeded', house('pex', 180, 96, -8))).toEqual([]);
    expect(findingsOf('rating-exceeded', house('pex', 180, 101, 8))).toHaveLength(1);
  });

  it('rating-unknown: CPVC hotter than its rating goes', () => {
    expect(findingsOf('rating-unknown', house('cpvc', 181, 60))).toMatchObject([
      { severity: 'warning', run: 'hot' },
    ]);
    expect(findingsOf('rating-unknown', house('cpvc', 180, 60))).toEqual([]);
  });
});
