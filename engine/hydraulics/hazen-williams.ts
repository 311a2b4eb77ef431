import { sources } from '../../tables/sources.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { Formula } from '../explain/formula.ts';

/** Exponent of flow; it belongs to this printing of the law, as do 0.2083 and 4.8655. */
export const hazenWilliamsExponent = 1.852;

/**
 * Friction in feet of head per 100 ft of pipe, by the law of Hazen and Williams in the head form for US units.
 *
 * For water near 60 °F in turbulent flow: the law has no term for viscosity, flatters small bores when cold and is
 * hard on hot water. Other printings (4.52 with 1.85 and 4.87, 10.67 in SI) differ by up to one percent; constants
 * and exponents of two printings are never mixed.
 */
export const hazenWilliams = {
  id: 'hazen-williams',
  title: 'Friction, Hazen-Williams',
  printed: 'h = 0.2083 · (100/C)^1.852 · Q^1.852 / d^4.8655',
  source: {
    source: sources['plastic-pipe-manual'],
    at: { section: 'friction loss', checkedOn: '2026-11-25' },
    verified: 'seen',
  },
  symbols: {
    Q: { unit: 'gpm', meaning: 'design flow' },
    C: { unit: 'one', meaning: 'Hazen-Williams C of the pipe' },
    d: { unit: 'in', meaning: 'bore' },
  },
  result: { unit: 'ft/100ft', meaning: 'head lost in the pipe' },
  compute: ({ Q, C, d }) => (0.2083 * (100 / C) ** 1.852 * Q ** hazenWilliamsExponent) / d ** 4.8655,
} as const satisfies Formula<'Q' | 'C' | 'd'>;

/** Pressure gradient of a head gradient: feet of head per 100 ft are metres per 100 m, of the water that flows. */
export const headGradient = {
  id: 'head-gradient',
  title: 'Head as pressure',
  printed: 'R = (h / 100) · ρ · g',
  source: {
    source: sources.hydrostatics,
    at: { checkedOn: '2026-11-25' },
    verified: 'textbook',
  },
  symbols: {
    h: { unit: 'ft/100ft', meaning: 'head lost in the pipe' },
    ρ: { unit: 'kg/m3', meaning: 'density of the water' },
    g: { unit: 'm/s2', meaning: 'standard gravity' },
  },
  result: { unit: 'Pa/m', meaning: 'friction gradient' },
  compute: ({ h, ρ, g }) => (h / 100) * ρ * g,
} as const satisfies Formula<'h' | 'ρ' | 'g'>;

/**
 * What {@link hazenWilliams} and {@link headGradient} leave to do at each flow: gradient (Pa/m) = this x flow^1.852,
 * flow in m3/s.
 *
 * @param bore m
 * @param density kg/m3
 */
export function hazenWilliamsCoefficient(c: number, bore: number, density: number, gravity: number): number {
  const headAtOneGpm = hazenWilliams.compute({ Q: 1, C: c, d: bore / toSI(1, 'in') });
  const gradientAtOneGpm = headGradient.compute({ h: headAtOneGpm, ρ: density, g: gravity });
  return gradientAtOneGpm / toSI(1, 'gpm') ** hazenWilliamsExponent;
}
