import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { QuantityDimension } from '../../../engine/job/job.ts';
import { parseQuantity } from '../../../engine/units/parse-quantity.ts';
import type { UnitId } from '../../../tables/units/definitions.ts';
import { toSI } from '../../../tables/units/definitions.ts';

function si(text: string, dimension: QuantityDimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.quantity.si;
}

function problem(text: string, dimension: QuantityDimension): string {
  const parsed = parseQuantity(text, dimension);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.quantity.si}`);
  return parsed.problem;
}

/** Relative to the value; a last digit may differ by the order of two multiplications. */
function expectEqual(actual: number, expected: number, within = 4e-16) {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(within * Math.abs(expected));
}

describe('parseQuantity', () => {
  // Written-out arithmetic on the exact definitions: 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 gal = 3.785411784 L,
  // 1 psi = 0.45359237 x 9.80665 / 0.0254^2 Pa, F = (F + 459.67) x 5/9 K.
  const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
  it.each<[string, QuantityDimension, number]>([
    ['62 psi', 'pressure', 62 * psi],
    ['62psi', 'pressure', 62 * psi],
    ['62 PSI', 'pressure', 62 * psi],
    ['62 psig', 'pressure', 62 * psi],
    ['4.2 bar', 'pressure', 420_000],
    ['420 kPa', 'pressure', 420_000],
    ['0.42 MPa', 'pressure', 420_000],
    ['420 mbar', 'pressure', 42_000],
    ['12 ft 6 in', 'length', 12.5 * 0.3048],
    [`12' 6"`, 'length', 12.5 * 0.3048],
    [`12'-6"`, 'length', 12.5 * 0.3048],
    [`12'6"`, 'length', 12.5 * 0.3048],
    ['12 feet, 6 inches', 'length', 12.5 * 0.3048],
    ['12\u2032 6\u2033', 'length', 12.5 * 0.3048],
    ['12\u2019 6\u201d', 'length', 12.5 * 0.3048],
    [`12' 6''`, 'length', 12.5 * 0.3048],
    [`12'-6-1/2"`, 'length', 12 * 0.3048 + 6.5 * 0.0254],
    ['6-1/2 in', 'length', 6.5 * 0.0254],
    ['6 1/2 in.', 'length', 6.5 * 0.0254],
    ['6\u00bd"', 'length', 6.5 * 0.0254],
    ['\u00be in', 'length', 0.75 * 0.0254],
    ['1/2 in', 'length', 0.5 * 0.0254],
    ['.5 in', 'length', 0.5 * 0.0254],
    ['18 m', 'length', 18],
    ['18\u00a0m', 'length', 18],
    ['1800 cm', 'length', 18],
    ['13 mm', 'length', 0.013],
    ['1.2 km', 'length', 1200],
    ['-4 ft', 'length', -4 * 0.3048],
    [`-4' 6"`, 'length', -4.5 * 0.3048],
    ['\u22124 ft', 'length', -4 * 0.3048],
    ['+4 ft', 'length', 4 * 0.3048],
    ['2.5 gpm', 'flow', (2.5 * 3.785411784e-3) / 60],
    ['2.5 gal/min', 'flow', (2.5 * 3.785411784e-3) / 60],
    ['0.16 L/s', 'flow', 0.16e-3],
    ['9 L/min', 'flow', 9e-3 / 60],
    ['9 lpm', 'flow', 9e-3 / 60],
    ['3 m\u00b3/h', 'flow', 3 / 3600],
    ['140 F', 'temperature', (140 + 459.67) * (5 / 9)],
    ['140\u00b0F', 'temperature', (140 + 459.67) * (5 / 9)],
    ['60 \u00b0C', 'temperature', 333.15],
    ['60 deg C', 'temperature', 333.15],
    ['300 K', 'temperature', 300],
    ['8 ft/s', 'velocity', 8 * 0.3048],
    ['8 fps', 'velocity', 8 * 0.3048],
    ['2 m/s', 'velocity', 2],
    ['0.433 psi/ft', 'pressure gradient', (0.433 * psi) / 0.3048],
    ['3 psi/100 ft', 'pressure gradient', (3 * psi) / 30.48],
    ['9.8 kPa/m', 'pressure gradient', 9800],
    ['2.3 Cv', 'flow coefficient', 2.3],
  ])('reads %s', (text, dimension, expected) => {
    expectEqual(si(text, dimension), expected);
  });

  it('keeps the text as it was typed', () => {
    expect(parseQuantity(" 12'-6\u2033 ", 'length')).toMatchObject({
      ok: true,
      quantity: { typed: "12'-6\u2033" },
    });
  });

  // mathjs as its own package loads it is the reference; its psi is rounded at the eleventh digit.
  const exact = 1e-15;
  const rounded = 1e-10;
  it.each<[UnitId, string, QuantityDimension, string, string, number]>([
    ['psi', 'psi', 'pressure', 'psi', 'Pa', rounded],
    ['bar', 'bar', 'pressure', 'bar', 'Pa', exact],
    ['kPa', 'kPa', 'pressure', 'kPa', 'Pa', exact],
    ['Pa', 'Pa', 'pressure', 'Pa', 'Pa', exact],
    ['psi/ft', 'psi/ft', 'pressure gradient', 'psi/ft', 'Pa/m', rounded],
    ['kPa/m', 'kPa/m', 'pressure gradient', 'kPa/m', 'Pa/m', exact],
    ['Pa/m', 'Pa/m', 'pressure gradient', 'Pa/m', 'Pa/m', exact],
    ['gpm', 'gpm', 'flow', 'gal/minute', 'm^3/s', exact],
    ['L/s', 'L/s', 'flow', 'L/s', 'm^3/s', exact],
    ['L/min', 'L/min', 'flow', 'L/minute', 'm^3/s', exact],
    ['m3/h', 'm3/h', 'flow', 'm^3/hour', 'm^3/s', exact],
    ['m3/s', 'm3/s', 'flow', 'm^3/s', 'm^3/s', exact],
    ['ft', 'ft', 'length', 'ft', 'm', exact],
    ['in', 'in', 'length', 'in', 'm', exact],
    ['m', 'm', 'length', 'm', 'm', exact],
    ['mm', 'mm', 'length', 'mm', 'm', exact],
    ['ft/s', 'ft/s', 'velocity', 'ft/s', 'm/s', exact],
    ['m/s', 'm/s', 'velocity', 'm/s', 'm/s', exact],
    ['F', 'F', 'temperature', 'degF', 'K', exact],
    ['C', 'C', 'temperature', 'degC', 'K', exact],
    ['K', 'K', 'temperature', 'K', 'K', exact],
  ])('agrees for %s with the tables and with mathjs', (id, word, dimension, mathUnit, base, within) => {
    const ranges: { readonly [unit: string]: readonly [number, number] } = {
      F: [33, 211],
      C: [1, 99],
      K: [274, 372],
    };
    const [min, max] = ranges[id] ?? [0.001, 0.05];
    fc.assert(
      fc.property(fc.integer({ min: min * 1000, max: max * 1000 }), (thousandths) => {
        const value = thousandths / 1000;
        const read = si(`${value} ${word}`, dimension);
        expectEqual(read, toSI(value, id), exact);
        expectEqual(read, unit(value, mathUnit).toNumber(base), within);
      }),
    );
  });

  it.each<[string, QuantityDimension, string]>([
    ['62', 'pressure', 'has no unit'],
    ['', 'length', 'is empty'],
    ['   ', 'length', 'is empty'],
    ['psi', 'pressure', 'does not begin with a number'],
    ['62 psi', 'length', 'is a pressure'],
    ['12 ft', 'pressure', 'is a length'],
    ['3 gpm', 'velocity', 'is a flow'],
    ['0.4 psi/ft', 'pressure', 'is a pressure gradient'],
    ['3 kg', 'length', 'is a mass'],
    ['2 hours', 'flow', 'is a time'],
    ['2 cubits', 'length', 'has the unknown unit "cubits"'],
    ['5 Mm', 'length', 'has the unknown unit "Mm"'],
    ['NaN psi', 'pressure', 'does not begin with a number'],
    ['Infinity psi', 'pressure', 'does not begin with a number'],
    ['-Infinity ft', 'length', 'does not begin with a number'],
    ['1e308 psi', 'pressure', 'power of ten'],
    ['1e2 ft', 'length', 'power of ten'],
    ['99999999999999999999999999999999999999 ft', 'length', 'is not within -3000 to 3000 m'],
    ['3000.1 m', 'length', 'is not within -3000 to 3000 m'],
    ['401 psi', 'pressure', 'is not within 0 to 400 psi'],
    ['-1 psi', 'pressure', 'is not within 0 to 400 psi'],
    ['213 F', 'temperature', 'is not within 32 to 212 F'],
    ['-1 C', 'temperature', 'is not within 32 to 212 F'],
    ['2001 gpm', 'flow', 'is not within 0 to 2000 gpm'],
    ['101 ft/s', 'velocity', 'is not within 0 to 100 ft/s'],
    ['12 ft 14 in', 'length', '12 inches or more'],
    [`8' 6`, 'length', 'unknown unit'],
    ['1/0 ft', 'length', 'fraction over 0'],
    ['1,200 ft', 'length', 'comma'],
    ['1,5 m', 'length', 'comma'],
    ['3 * 4 ft', 'length', 'unknown unit'],
    ['3 ft * 4', 'length', 'unknown unit'],
    ['3 ft^2', 'length', 'unknown unit'],
    ['sqrt(4) ft', 'length', 'does not begin with a number'],
    ['import("x") ft', 'length', 'does not begin with a number'],
    ['5 constructor', 'length', 'unknown unit'],
    ['5 __proto__', 'length', 'unknown unit'],
    ['0x10 ft', 'length', 'unknown unit'],
    ['\ud800 ft', 'length', '"\\ud800 ft" does not begin'],
    ['9'.repeat(61), 'length', 'is longer than 60 characters'],
  ])('refuses %j as %s', (text, dimension, what) => {
    const sentence = problem(text, dimension);
    expect(sentence).toContain(what);
    expect(sentence).toMatch(new RegExp(`; expected a ${dimension} in .+, such as ".+"$`));
    expect(sentence.length).toBeLessThan(200);
  });

  it('takes a limit itself, in whatever unit', () => {
    expect(parseQuantity('400 psi', 'pressure').ok).toBe(true);
    expect(parseQuantity('212 F', 'temperature').ok).toBe(true);
    expect(parseQuantity('100 C', 'temperature').ok).toBe(true);
    expect(parseQuantity('0 C', 'temperature').ok).toBe(true);
    expect(parseQuantity('-3000 m', 'length').ok).toBe(true);
  });

  it('gives a finite value or a sentence for any text', () => {
    const pieces = fc.constantFrom(
      '1',
      '12',
      '/',
      '-',
      "'",
      '"',
      ' ',
      '.',
      'ft',
      'in',
      'psi',
      'e5',
      '(',
      '^',
      '\u00bd',
      '\u2032',
      'm',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces, { maxLength: 10 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, (any) => {
        const parsed = parseQuantity(any, 'length');
        if (parsed.ok) expect(Number.isFinite(parsed.quantity.si)).toBe(true);
        else expect(parsed.problem).toContain('expected a length');
      }),
      { numRuns: 2000 },
    );
  });

  it('says the same when it remembers', () => {
    expect(parseQuantity('7 psi', 'length')).toEqual(parseQuantity('7 psi', 'length'));
    for (let index = 0; index < 6000; index++) si(`${index / 10} ft`, 'length');
    expectEqual(si('7 ft', 'length'), 7 * 0.3048);
  });

  it('reads a length to the last digit as a table prints it, so that a limit can be met exactly', () => {
    for (let feet = 1; feet <= 200; feet++) {
      const read = parseQuantity(`${feet} ft`, 'length');
      expect(read.ok && read.quantity.si, `${feet} ft`).toBe(toSI(feet, 'ft'));
    }
  });
});
