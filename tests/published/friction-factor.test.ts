import { describe, expect, it } from 'vitest';
import {
  colebrookFactor,
  frictionFactor,
  laminarTo,
  turbulentFrom,
} from '../../engine/hydraulics/colebrook.ts';
import { darcyWeisbachGradient, reynolds } from '../../engine/hydraulics/darcy-weisbach.ts';
import { hazenWilliamsCoefficient, hazenWilliamsExponent } from '../../engine/hydraulics/hazen-williams.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { numberIn, readData } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';

describe('fluids 1.0.22 (open-source library, Python; run 2026)', () => {
  /**
   * The library solves Colebrook exactly, by the Lambert W function; the record of the points keeps three decimals of
   * Re, and f changes by at most a quarter of what Re changes by.
   */
  it.each(readData('colebrook-points.csv'))('f at Re $re, relative roughness $relative_roughness', (row) => {
    const f = numberIn(row, 'f');
    const Re = numberIn(row, 're');
    const computed = colebrookFactor(Re, numberIn(row, 'relative_roughness'));
    expectPrinted(computed, f, f * ((0.25 * 0.0005) / Re + 1e-14));
  });

  it.each(readData('laminar-points.csv'))('laminar f at Re $re', (row) => {
    const f = numberIn(row, 'f');
    expectPrinted(frictionFactor(numberIn(row, 're'), 0.001), f, 1e-14 * f);
  });

  const pipes = readData('pipe-points.csv').map((row) => ({
    name: row.pipe!,
    bore: toSI(numberIn(row, 'bore_in'), 'in'),
    roughness: numberIn(row, 'roughness_m'),
    density: numberIn(row, 'density'),
    viscosity: numberIn(row, 'viscosity'),
    gpm: numberIn(row, 'gpm'),
    speed: numberIn(row, 'm_per_s'),
    re: numberIn(row, 're'),
    gradient: numberIn(row, 'pa_per_m'),
  }));

  it.each(pipes)('$name, $gpm gpm: velocity and Reynolds number', (pipe) => {
    const { bore, density, viscosity, gpm, speed, re } = pipe;
    const v = velocity.compute({ Q: toSI(gpm, 'gpm'), d: bore });
    // The library holds the gallon to ten digits.
    expectPrinted(v, speed, 1e-9 * speed);
    expectPrinted(reynolds.compute({ ρ: density, v, d: bore, μ: viscosity }), re, 1e-9 * re);
  });

  /** The library's default friction factor is an explicit form, within 1e-9 of Colebrook by its own account. */
  it.each(pipes.filter(({ re }) => re <= laminarTo || re >= turbulentFrom))(
    '$name, $gpm gpm: loss per metre',
    (pipe) => {
      const { bore, roughness, density, viscosity, speed, gradient } = pipe;
      const computed = darcyWeisbachGradient(speed, bore, roughness, density, viscosity);
      expectPrinted(computed, gradient, 1e-8 * gradient);
    },
  );

  it('has one laminar point and eight where no law holds, for disagreements.test.ts', () => {
    expect(pipes.filter(({ re }) => re <= laminarTo)).toHaveLength(1);
    expect(pipes.filter(({ re }) => re > laminarTo && re < turbulentFrom)).toHaveLength(8);
  });
});

describe('fully rough friction factors of an open hydraulics textbook (E. Maurer, Example 4.7, pipes of ks 0.00025 m)', () => {
  /** Printed to 0.00001; the book's flows are fast enough that its factors are the fully rough ones. */
  it.each([
    { bore: 0.3, f: 0.01879 },
    { bore: 0.25, f: 0.01964 },
    { bore: 0.2, f: 0.02075 },
    { bore: 0.15, f: 0.02233 },
  ])('$bore m: $f', ({ bore, f }) => {
    expectPrinted(frictionFactor(1e12, 0.00025 / bore), f, 0.000005);
  });

  /** K = 8 f L / (pi^2 g D^5), the head lost at 1 m3/s; 0.1 %: the print carries four digits of f, and its own g. */
  it.each([
    { bore: 0.3, length: 250, f: 0.01879, k: 159.7828 },
    { bore: 0.2, length: 100, f: 0.02075, k: 535.9666 },
    { bore: 0.2, length: 125, f: 0.02075, k: 669.9582 },
    { bore: 0.15, length: 100, f: 0.02233, k: 2430.5356 },
    { bore: 0.25, length: 125, f: 0.01964, k: 207.7883 },
  ])('$bore m, $length m: head $k m at 1 m3/s', ({ bore, length, k }) => {
    const speed = velocity.compute({ Q: 1, d: bore });
    const density = 1000;
    // A viscosity so small that the flow is fully rough.
    const gradient = darcyWeisbachGradient(speed, bore, 0.00025, density, 1e-9);
    expectPrinted((gradient * length) / (density * 9.81), k, 0.001 * k);
  });
});

describe('laboratory exercise of the same book: 25 mm pipe, 3 m, water at 20 C', () => {
  /**
   * Neither roughness nor C is given: C follows from the first reading (0.20 L/s, 0.052 m), and the two others must
   * follow from it. Head is printed to 0.001 m, so that half of a digit of each of the two readings compared is allowed.
   * By Colebrook the third reading comes out 4 % higher: disagreements.test.ts.
   */
  const head = (litres: number, c: number): number => {
    const density = 998.2;
    const coefficient = hazenWilliamsCoefficient(c, 0.025, density, 9.81);
    return (3 * coefficient * (litres / 1000) ** hazenWilliamsExponent) / (density * 9.81);
  };
  const c = 100 * (head(0.2, 100) / 0.052) ** (1 / hazenWilliamsExponent);

  it.each([
    { litres: 0.24, printed: 0.073 },
    { litres: 0.3, printed: 0.11 },
  ])('$litres L/s: $printed m', ({ litres, printed }) => {
    expectPrinted(head(litres, c), printed, 0.0005 + (0.0005 / 0.052) * printed);
  });
});
