import { sources } from '../../tables/sources.ts';
import type { Formula } from '../explain/formula.ts';
import { frictionFactor } from './colebrook.ts';

/** Reynolds number of flow in a full round pipe. */
export const reynolds = {
  id: 'reynolds',
  title: 'Reynolds number',
  printed: 'Re = ρ · v · d / μ',
  source: {
    source: sources['darcy-weisbach'],
    at: { section: 'Reynolds number', checkedOn: '2026-11-25' },
    verified: 'textbook',
  },
  symbols: {
    ρ: { unit: 'kg/m3', meaning: 'density of the water' },
    v: { unit: 'm/s', meaning: 'velocity' },
    d: { unit: 'm', meaning: 'bore' },
    μ: { unit: 'Pa.s', meaning: 'viscosity of the water' },
  },
  result: { unit: 'one', meaning: 'Reynolds number' },
  compute: ({ ρ, v, d, μ }) => (ρ * v * d) / μ,
} as const satisfies Formula<'ρ' | 'v' | 'd' | 'μ'>;

/** Friction gradient by the law of Darcy and Weisbach. */
export const darcyWeisbach = {
  id: 'darcy-weisbach',
  title: 'Friction, Darcy-Weisbach',
  printed: 'R = f · ρ · v² / (2 · d)',
  source: {
    source: sources['darcy-weisbach'],
    at: { section: 'head loss in pipes', checkedOn: '2026-11-25' },
    verified: 'textbook',
  },
  symbols: {
    f: { unit: 'one', meaning: 'Darcy friction factor' },
    ρ: { unit: 'kg/m3', meaning: 'density of the water' },
    v: { unit: 'm/s', meaning: 'velocity' },
    d: { unit: 'm', meaning: 'bore' },
  },
  result: { unit: 'Pa/m', meaning: 'friction gradient' },
  compute: ({ f, ρ, v, d }) => (f * ρ * v * v) / (2 * d),
} as const satisfies Formula<'f' | 'ρ' | 'v' | 'd'>;

/**
 * Friction gradient in one go, Pa/m, for the solver.
 *
 * @param speed m/s
 * @param bore m
 * @param roughness m
 * @param density kg/m3
 * @param viscosity Pa s
 */
export function darcyWeisbachGradient(
  speed: number,
  bore: number,
  roughness: number,
  density: number,
  viscosity: number,
): number {
  const f = frictionFactor((density * speed * bore) / viscosity, roughness / bore);
  return (f * density * speed * speed) / (2 * bore);
}
