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

describe('a reducing valve that is there already', () => {
  const set = (valve: number, street: number) =>
    findingsOf(
      'static-high',
      quietBut({ service: { end: { device: 'reducing-valve', set: psi(valve) } } }, [], high(street)),
    );

  it('is set lower, to 80 psi where it lets more through', () => {
    const [{ mend } = {}] = set(90, 110);
    expect(mend).toMatchObject({ do: 'lower-setting', run: 'service' });
    expect(mend?.do === 'lower-setting' ? mend.set : 0).toBeCloseTo(toSI(80, 'psi'), 3);
  });

  it('is set lower than what comes in, where that is less than it is set to', () => {
    const [{ mend } = {}] = set(90, 85);
    expect(mend?.do === 'lower-setting' ? mend.set : 0).toBeCloseTo(toSI(80, 'psi'), 3);
  });
});

/** IRC 2021, P2903.3: 40 psi; the IPC states none. */
describe('static-low', () => {
  const low = (pressure: number, profile: 'irc-2021' | 'ipc-2018' = 'irc-2021') =>
    findingsOf(
      'static-low',
      quietBut({}, [], {
        basis: { ...usualBasis, profile },
        supply: { kind: 'static', elevation: ft(0), low: psi(pressure), high: psi(70) },
      }),
    );

  it('under 40 psi by night, where the code asks for it', () => {
    expect(low(39)).toMatchObject([{ severity: 'warning', run: 'service' }]);
    expect(low(40)).toEqual([]);
    expect(low(39, 'ipc-2018')).toEqual([]);
  });
});

describe('material-cold-only', () => {
  const sink = (material: Run['material']) =>
    job(
      [fixture('sink', 'kitchen-sink', { inlets: 'hot' })],
      [
        run('service', 'street', { material: 'pvc', end: { device: 'heater', type: 'storage' } }),
        run('hot', 'service', { size: '3/4', material, end: hot('sink') }),
      ],
      { basis: { hotTemperature: fahrenheit(120) } },
    );

  it.each(['pvc', 'pe'] as const)('in hot %s, and not in the cold pipe before the heater', (material) => {
    expect(findingsOf('material-cold-only', sink(material))).toMatchObject([
      { severity: 'error', run: 'hot' },
    ]);
  });

  it.each(['pex', 'cpvc', 'copper-l'] as const)('not in %s', (material) => {
    expect(findingsOf('material-cold-only', sink(material))).toEqual([]);
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
