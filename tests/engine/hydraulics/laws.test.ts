import { describe, expect, it } from 'vitest';
import { colebrookFactor, darcyFactor, frictionFactor } from '../../../engine/hydraulics/colebrook.ts';
import { darcyWeisbach, darcyWeisbachGradient, reynolds } from '../../../engine/hydraulics/darcy-weisbach.ts';
import {
  hazenWilliams,
  hazenWilliamsCoefficient,
  headGradient,
} from '../../../engine/hydraulics/hazen-williams.ts';
import { velocity } from '../../../engine/hydraulics/velocity.ts';
import { toSI } from '../../../tables/units/definitions.ts';

describe('velocity', () => {
  it('is flow over area', () => {
    expect(velocity.compute({ Q: 0.001, d: 0.04 })).toBeCloseTo(0.001 / (Math.PI * 0.02 ** 2), 12);
  });

  /** 0.4085 Q / d², the form with gallons and inches. */
  it('is 0.4085 Q/d² in ft/s', () => {
    const metric = velocity.compute({ Q: toSI(8, 'gpm'), d: toSI(0.671, 'in') });
    expect(metric / toSI(1, 'ft/s')).toBeCloseTo((0.4085 * 8) / 0.671 ** 2, 2);
  });
});

describe('Darcy-Weisbach', () => {
  it('Reynolds number: 1000 x 2 x 0.02 / 0.001', () => {
    expect(reynolds.compute({ ρ: 1000, v: 2, d: 0.02, μ: 0.001 })).toBeCloseTo(40_000, 9);
  });

  it('gradient: 0.02 x 1000 x 4 / (2 x 0.02)', () => {
    expect(darcyWeisbach.compute({ f: 0.02, ρ: 1000, v: 2, d: 0.02 })).toBeCloseTo(2000, 9);
  });

  /** Re is 1000: laminar flow loses 32 mu v / d², the law of Hagen and Poiseuille. */
  it('laminar gradient is 32 μ v / d²', () => {
    expect(darcyWeisbachGradient(0.05, 0.02, 0, 1000, 0.001)).toBeCloseTo((32 * 0.001 * 0.05) / 0.02 ** 2, 9);
  });

  it('loses nothing at rest', () => expect(darcyWeisbachGradient(0, 0.02, 1e-6, 1000, 0.001)).toBe(0));

  it('takes the straight line half way in the transition', () => {
    const middle = (64 / 2000 + colebrookFactor(4000, 0.001)) / 2;
    expect(frictionFactor(3000, 0.001)).toBeCloseTo(middle, 12);
    expect(darcyFactor.compute({ Re: 3000, ε: 0.00002, d: 0.02 })).toBeCloseTo(middle, 12);
  });
});

describe('Hazen-Williams', () => {
  /** 10 gpm, C = 100, 1 in: 0.2083 x 10^1.852, and 10^1.852 is 71.1214. */
  it('head per 100 ft', () => {
    expect(hazenWilliams.compute({ Q: 10, C: 100, d: 1 })).toBeCloseTo(0.2083 * 71.1214, 3);
  });

  it('head as pressure: 10 ft per 100 ft of a water of 1000 kg/m3', () => {
    expect(headGradient.compute({ h: 10, ρ: 1000, g: 9.80665 })).toBeCloseTo(980.665, 9);
  });

  it('coefficient and flow give what the formula gives', () => {
    const flow = toSI(7, 'gpm');
    const head = hazenWilliams.compute({ Q: 7, C: 140, d: 0.785 });
    const gradient = hazenWilliamsCoefficient(140, toSI(0.785, 'in'), 999, 9.80665) * flow ** 1.852;
    expect(gradient).toBeCloseTo((head / 100) * 999 * 9.80665, 6);
  });
});
