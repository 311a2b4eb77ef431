import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  colebrookFactor,
  frictionFactor,
  laminarTo,
  turbulentFrom,
} from '../../engine/hydraulics/colebrook.ts';
import { darcyWeisbachGradient } from '../../engine/hydraulics/darcy-weisbach.ts';
import { hazenWilliamsCoefficient, hazenWilliamsExponent } from '../../engine/hydraulics/hazen-williams.ts';
import { risingSizes } from '../../engine/hydraulics/rising-sizes.ts';
import { velocity } from '../../engine/hydraulics/velocity.ts';
import { waterAt } from '../../engine/hydraulics/water.ts';
import { lookUp } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import { materials } from '../../tables/pipe/names.ts';
import { roughness } from '../../tables/pipe/roughness.ts';
import { standardGravity } from '../../tables/units/definitions.ts';
import { keysOf } from '../arbitrary/run.ts';

const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Evenly spread over powers of ten. */
const decades = (min: number, max: number): fc.Arbitrary<number> =>
  real(Math.log10(min), Math.log10(max)).map((power) => 10 ** power);
const relativeRoughness = fc.oneof(fc.constant(0), decades(1e-7, 0.05));

describe('the friction factor', () => {
  it('satisfies the law of Colebrook', async () => {
    await fc.assert(
      fc.property(decades(4000, 1e8), relativeRoughness, (Re, rough) => {
        const root = Math.sqrt(colebrookFactor(Re, rough));
        const right = -2 * Math.log10(rough / 3.7 + 2.51 / (Re * root));
        expect(Math.abs(1 / root - right)).toBeLessThanOrEqual(1e-12 * right);
      }),
      { numRuns: 1000 },
    );
  });

  it('is that of laminar flow at its end, and has no jump at either end of the transition', async () => {
    await fc.assert(
      fc.property(relativeRoughness, (rough) => {
        expect(frictionFactor(laminarTo, rough)).toBe(64 / laminarTo);
        const nudge = 1e-9;
        for (const Re of [laminarTo, turbulentFrom]) {
          const below = frictionFactor(Re * (1 - nudge), rough);
          expect(Math.abs(frictionFactor(Re * (1 + nudge), rough) - below)).toBeLessThan(1e-8 * below * 10);
        }
      }),
    );
  });

  it('makes loss rise with flow, through the transition too', async () => {
    await fc.assert(
      fc.property(decades(1, 1e7), real(1.0001, 3), relativeRoughness, (Re, more, rough) => {
        const loss = (at: number): number => frictionFactor(at, rough) * at * at;
        expect(loss(Re * more)).toBeGreaterThan(loss(Re));
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a pipe of the next size', () => {
  const steps = keysOf(materials).flatMap((material) => {
    const sizes = risingSizes(pipeDimensions[material].rows);
    return sizes.slice(1).map((larger, index) => ({ material, smaller: sizes[index]!, larger }));
  });

  it.each(steps)('$material $larger in never loses more than $smaller in, by either law', async (step) => {
    const { material, smaller, larger } = step;
    const bore = (size: string): number => lookUp(pipeDimensions[material], size, 'bore').value;
    const rough = lookUp(roughness, material, 'roughness').value;
    const c = lookUp(roughness, material, 'c').value;
    expect(bore(larger)).toBeGreaterThan(bore(smaller));
    await fc.assert(
      fc.property(decades(1e-7, 0.02), real(275, 355), (flow, temperature) => {
        const { density, viscosity } = waterAt(temperature);
        const darcy = (size: string): number => {
          const speed = velocity.compute({ Q: flow, d: bore(size) });
          return darcyWeisbachGradient(speed, bore(size), rough, density, viscosity);
        };
        const hazen = (size: string): number =>
          hazenWilliamsCoefficient(c, bore(size), density, standardGravity) * flow ** hazenWilliamsExponent;
        expect(darcy(larger)).toBeLessThan(darcy(smaller));
        expect(hazen(larger)).toBeLessThan(hazen(smaller));
      }),
    );
  });
});
