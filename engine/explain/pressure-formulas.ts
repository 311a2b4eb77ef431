import { sources } from '../../tables/sources.ts';
import { ours as arithmetic } from './arithmetic.ts';
import type { Formula } from './formula.ts';

const checkedOn = '2026-11-25';
const hydrostatics: Formula['source'] = {
  source: sources.hydrostatics,
  at: { checkedOn },
  verified: 'textbook',
};
const localLoss: Formula['source'] = {
  source: sources['darcy-weisbach'],
  at: { section: 'head loss in pipes', checkedOn },
  verified: 'textbook',
};

/** Friction over a length, of pipe or of the pipe that fittings are worth. */
export const gradientOverLength = {
  id: 'gradient-length',
  title: 'Friction over the length',
  printed: 'R · L',
  source: arithmetic,
  symbols: { R: { unit: 'psi/ft', meaning: 'friction gradient' }, L: { unit: 'ft', meaning: 'length' } },
  result: { unit: 'psi', meaning: 'loss' },
  compute: ({ R, L }) => R * L,
} as const satisfies Formula<'R' | 'L'>;

/** Fittings of which some are given as lengths and some as K. */
export const fittingLossByK = {
  id: 'fitting-loss',
  title: 'Loss of the fittings',
  printed: 'R · L + K · ρ · v² / 2',
  source: localLoss,
  symbols: {
    R: { unit: 'Pa/m', meaning: 'friction gradient' },
    L: { unit: 'm', meaning: 'equivalent length' },
    K: { unit: 'one', meaning: 'sum of K' },
    ρ: { unit: 'kg/m3', meaning: 'density of the water' },
    v: { unit: 'm/s', meaning: 'velocity' },
  },
  result: { unit: 'Pa', meaning: 'loss of the fittings' },
  compute: ({ R, L, K, ρ, v }) => R * L + (K * ρ * v * v) / 2,
} as const satisfies Formula<'R' | 'L' | 'K' | 'ρ' | 'v'>;

/** Fittings as a share of the pipe. */
export const allowance = {
  id: 'allowance',
  title: 'Fittings as a share of the pipe',
  printed: 'L · a / 100',
  source: {
    source: sources['trade-practice'],
    at: { section: 'allowance', checkedOn },
    verified: 'common-practice',
  },
  symbols: { L: { unit: 'ft', meaning: 'developed length' }, a: { unit: 'one', meaning: 'percent' } },
  result: { unit: 'ft', meaning: 'equivalent length' },
  compute: ({ L, a }) => (L * a) / 100,
} as const satisfies Formula<'L' | 'a'>;

/** Pressure given up to height. */
export const columnOfWater = {
  id: 'elevation',
  title: 'Height',
  printed: 'ρ · g · z',
  source: hydrostatics,
  symbols: {
    ρ: { unit: 'kg/m3', meaning: 'density of the water' },
    g: { unit: 'm/s2', meaning: 'standard gravity' },
    z: { unit: 'm', meaning: 'rise' },
  },
  result: { unit: 'Pa', meaning: 'pressure given up to height' },
  compute: ({ ρ, g, z }) => ρ * g * z,
} as const satisfies Formula<'ρ' | 'g' | 'z'>;

/** Pressure given up to height by a rounded factor that a code prescribes. */
export const weightOfRise = {
  id: 'elevation-factor',
  title: 'Height, by the factor of the basis',
  printed: 'w · z',
  source: hydrostatics,
  symbols: { w: { unit: 'psi/ft', meaning: 'elevation factor' }, z: { unit: 'ft', meaning: 'rise' } },
  result: { unit: 'psi', meaning: 'pressure given up to height' },
  compute: ({ w, z }) => w * z,
} as const satisfies Formula<'w' | 'z'>;

/** What a reducing valve lets through. */
export const reducingValve = {
  id: 'reducing-valve',
  title: 'Behind the reducing valve',
  printed: 'min(p, s) - f',
  source: {
    source: sources.hightap,
    at: { section: 'reducing valve', checkedOn },
    verified: 'common-practice',
  },
  symbols: {
    p: { unit: 'psi', meaning: 'pressure in front of the valve' },
    s: { unit: 'psi', meaning: 'set pressure' },
    f: { unit: 'psi', meaning: 'fall-off at the flow' },
  },
  result: { unit: 'psi', meaning: 'pressure behind the valve' },
  compute: ({ p, s, f }) => Math.min(p, s) - f,
} as const satisfies Formula<'p' | 's' | 'f'>;

/** Loss of a valve or manifold by its flow coefficient. */
export const flowCoefficient = {
  id: 'flow-coefficient',
  title: 'Loss by the flow coefficient',
  printed: '(Q / Cv)²',
  source: {
    source: sources.hightap,
    at: { section: 'meaning of Cv: gpm of water at 1 psi', checkedOn },
    verified: 'common-practice',
  },
  symbols: {
    Q: { unit: 'gpm', meaning: 'design flow' },
    Cv: { unit: 'Cv', meaning: 'flow coefficient' },
  },
  result: { unit: 'psi', meaning: 'loss' },
  compute: ({ Q, Cv }) => (Q / Cv) ** 2,
} as const satisfies Formula<'Q' | 'Cv'>;
