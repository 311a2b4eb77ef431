import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../engine/explain/formula.ts';
import { columnOfWater, fittingLossByK } from '../../engine/explain/pressure-formulas.ts';
import { darcyFactor } from '../../engine/hydraulics/colebrook.ts';
import { darcyWeisbach, darcyWeisbachGradient, reynolds } from '../../engine/hydraulics/darcy-weisbach.ts';
import { headGradient } from '../../engine/hydraulics/hazen-williams.ts';
import { flowTestCurve } from '../../engine/hydraulics/supply-pressure.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import type { Dimension } from '../../tables/units/definitions.ts';
import { units } from '../../tables/units/definitions.ts';

/** Powers of metre, kilogram and second. */
const powers: { readonly [dimension in Dimension]?: readonly [number, number, number] } = {
  pressure: [-1, 1, -2],
  'pressure gradient': [-2, 1, -2],
  flow: [3, 0, -1],
  length: [1, 0, 0],
  velocity: [1, 0, -1],
  density: [-3, 1, 0],
  'dynamic viscosity': [-1, 1, -1],
  acceleration: [1, 0, -2],
  number: [0, 0, 0],
};

type Scale = readonly [number, number, number];
const base = fc.double({ min: 0.1, max: 10, noNaN: true });
const scales: fc.Arbitrary<Scale> = fc.tuple(base, base, base);

function scaleOf(dimension: Dimension, scale: Scale): number {
  const power = powers[dimension];
  if (power === undefined) throw new Error(`no powers of ${dimension}`);
  return scale.reduce((product, base, index) => product * base ** power[index]!, 1);
}

interface Law {
  readonly id: string;
  readonly names: readonly string[];
  /** Whether it is the same law when metre, kilogram and second are other ones. */
  readonly keepsDimensions: (terms: Readonly<Record<string, number>>, scale: Scale) => boolean;
}

function lawOf<S extends string>(formula: Formula<S>): Law {
  const names = Object.keys(formula.symbols) as S[];
  return {
    id: formula.id,
    names,
    keepsDimensions: (terms, scale) => {
      const plain = {} as Record<S, number>;
      const scaled = {} as Record<S, number>;
      for (const name of names) {
        plain[name] = terms[name]!;
        scaled[name] = terms[name]! * scaleOf(units[formula.symbols[name].unit].dimension, scale);
      }
      const expected = formula.compute(plain) * scaleOf(units[formula.result.unit].dimension, scale);
      return Math.abs(formula.compute(scaled) - expected) <= 1e-9 * Math.abs(expected);
    },
  };
}

const coherent = [
  lawOf(velocity),
  lawOf(reynolds),
  lawOf(darcyWeisbach),
  lawOf(darcyFactor),
  lawOf(headGradient),
  lawOf(columnOfWater),
  lawOf(fittingLossByK),
];

describe('formulas in coherent units are the same law in any metre, kilogram and second', () => {
  it.each(coherent)('$id', async ({ names, keepsDimensions }) => {
    await fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), {
          minLength: names.length,
          maxLength: names.length,
        }),
        scales,
        (values, scale) => {
          const terms = Object.fromEntries(names.map((name, index) => [name, values[index]!]));
          // A roughness is a small part of the bore.
          if (terms.ε !== undefined) terms.ε = terms.d! / 1000;
          if (terms.Re !== undefined) terms.Re *= 10_000;
          expect(keepsDimensions(terms, scale)).toBe(true);
        },
      ),
    );
  });

  it('flow test: the drop goes with a ratio of flows', async () => {
    await fc.assert(
      fc.property(scales, (scale) => {
        const terms = { p_low: 65, p_s: 66, p_r: 50, Q: 30, Q_t: 400, n: 1.85 };
        expect(lawOf(flowTestCurve).keepsDimensions(terms, scale)).toBe(true);
      }),
    );
  });

  it('the solver’s gradient in one go', async () => {
    const inputs = [1.4, 0.02, 1.5e-6, 998, 0.001] as const;
    const dimensions = ['velocity', 'length', 'length', 'density', 'dynamic viscosity'] as const;
    await fc.assert(
      fc.property(scales, (scale) => {
        const scaled = inputs.map((value, index) => value * scaleOf(dimensions[index]!, scale));
        const [speed, bore, rough, density, viscosity] = scaled as [number, number, number, number, number];
        const expected = darcyWeisbachGradient(...inputs) * scaleOf('pressure gradient', scale);
        const computed = darcyWeisbachGradient(speed, bore, rough, density, viscosity);
        expect(Math.abs(computed - expected)).toBeLessThanOrEqual(1e-9 * expected);
      }),
    );
  });

  it('a law with v in place of v² does not pass', () => {
    const faulty = lawOf({ ...darcyWeisbach, compute: ({ f, ρ, v, d }) => (f * ρ * v) / (2 * d) });
    const terms = { f: 0.02, ρ: 998, v: 1.4, d: 0.02 };
    expect(faulty.keepsDimensions(terms, [2, 3, 5])).toBe(false);
    expect(lawOf(darcyWeisbach).keepsDimensions(terms, [2, 3, 5])).toBe(true);
  });
});
