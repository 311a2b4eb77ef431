import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fromSI, standardGravity, toSI, type UnitId, units } from '../../../tables/units/definitions.ts';

/** Each unit as mathjs spells it, and the SI unit to convert to. */
const spelled: Partial<Record<UnitId, readonly [spelling: string, si: string]>> = {
  Pa: ['Pa', 'Pa'],
  kPa: ['kPa', 'Pa'],
  bar: ['bar', 'Pa'],
  psi: ['psi', 'Pa'],
  'Pa/m': ['Pa / m', 'Pa / m'],
  'kPa/m': ['kPa / m', 'Pa / m'],
  'psi/ft': ['psi / ft', 'Pa / m'],
  'm3/s': ['m^3 / s', 'm^3 / s'],
  'L/s': ['L / s', 'm^3 / s'],
  'L/min': ['L / minute', 'm^3 / s'],
  'm3/h': ['m^3 / hour', 'm^3 / s'],
  gpm: ['gallon / minute', 'm^3 / s'],
  m: ['m', 'm'],
  mm: ['mm', 'm'],
  ft: ['ft', 'm'],
  in: ['in', 'm'],
  'm/s': ['m / s', 'm / s'],
  'ft/s': ['ft / s', 'm / s'],
  K: ['K', 'K'],
  C: ['degC', 'K'],
  F: ['degF', 'K'],
  m3: ['m^3', 'm^3'],
  L: ['L', 'm^3'],
  gal: ['gallon', 'm^3'],
  floz: ['floz', 'm^3'],
  'm3/m': ['m^3 / m', 'm^2'],
  'floz/ft': ['floz / ft', 'm^2'],
  m2: ['m^2', 'm^2'],
  'kg/m3': ['kg / m^3', 'kg / m^3'],
  'Pa.s': ['Pa s', 'Pa s'],
  'm2/s': ['m^2 / s', 'm^2 / s'],
  'm/s2': ['m / s^2', 'm / s^2'],
};

const every = Object.keys(units) as UnitId[];

describe('units', () => {
  it.each(Object.entries(spelled) as [UnitId, readonly [string, string]][])(
    'agree with mathjs: %s',
    (id, [spelling, si]) => {
      for (const value of [1, 7.25, 212]) {
        const theirs = unit(value, spelling).toNumber(si);
        expect(Math.abs(toSI(value, id) / theirs - 1)).toBeLessThan(1e-9);
      }
    },
  );

  it('are the digits of their definition, to the last: 12 in, 231 in3', () => {
    expect(toSI(1, 'ft')).toBe(0.3048);
    expect(toSI(1, 'ft/s')).toBe(0.3048);
    expect(toSI(1, 'gal')).toBe(0.003785411784);
  });

  it('leave to their own definition only what mathjs cannot say', () => {
    const rest = every.filter((id) => spelled[id] === undefined);
    expect(rest).toEqual(['psi/100ft', 'wsfu', 'lu', 'Cv', 'ft/100ft', 'one']);
    expect(toSI(3.6, 'ft/100ft')).toBeCloseTo(toSI(3.6, 'ft') / toSI(100, 'ft'), 12);
    expect(toSI(100, 'psi/100ft')).toBeCloseTo(toSI(1, 'psi/ft'), 9);
    for (const id of ['wsfu', 'Cv', 'one'] as const) expect(toSI(3.6, id)).toBe(3.6);
  });

  it('round-trip through SI within a part in 1e12 of the largest number on the way', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...every),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (id, printed) => {
          const back = fromSI(toSI(printed, id), id);
          // An offset (Fahrenheit, Celsius) costs digits of small numbers.
          expect(Math.abs(back - printed)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(printed), 1000));
        },
      ),
    );
  });

  it('keep order: more in print is more in SI', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...every),
        fc.integer({ min: -100_000, max: 100_000 }),
        fc.integer({ min: 1, max: 1000 }),
        (id, printed, more) => toSI(printed + more, id) > toSI(printed, id),
      ),
    );
  });

  it('hold the definitions of the documents', () => {
    // NIST SP 811 (2008), appendix B.8: psi, gallon per minute; 32 F and 212 F by definition of the scale.
    expect(toSI(1, 'psi')).toBeCloseTo(6894.757, 3);
    expect(toSI(1, 'gpm')).toBeCloseTo(6.30902e-5, 11);
    expect(toSI(32, 'F')).toBeCloseTo(273.15, 9);
    expect(toSI(212, 'F')).toBeCloseTo(373.15, 9);
    expect(standardGravity).toBe(9.80665);
  });
});
