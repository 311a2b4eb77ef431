import { sources } from '../../tables/sources.ts';
import type { Formula } from '../explain/formula.ts';

/** Below this Reynolds number the flow is taken as laminar, above {@link turbulentFrom} as fully turbulent. */
export const laminarTo = 2000;
export const turbulentFrom = 4000;

const ln10 = Math.log(10);

/**
 * Darcy friction factor of turbulent flow by the law of Colebrook, 1/√f = -2 log10(ε/3.7 + 2.51/(Re √f)), solved
 * for x = 1/√f by Newton's method to machine precision.
 *
 * @param Re Reynolds number, 4000 or more
 * @param relativeRoughness ε/d, 0 to 0.05
 */
export function colebrookFactor(Re: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / Re;
  let x = -2 * Math.log10(a + 5.74 / Re ** 0.9);
  for (let turn = 0; turn < 20; turn++) {
    const inner = a + b * x;
    const error = x + (2 * Math.log(inner)) / ln10;
    const step = error / (1 + (2 * b) / (inner * ln10));
    x -= step;
    if (Math.abs(step) <= 4e-16 * Math.abs(x)) break;
  }
  return 1 / (x * x);
}

/**
 * Darcy friction factor at any flow: 64/Re while laminar, Colebrook while turbulent, and a straight line in between,
 * where no law holds and loss must still rise with flow.
 */
export function frictionFactor(Re: number, relativeRoughness: number): number {
  if (Re <= 0) return 0;
  if (Re <= laminarTo) return 64 / Re;
  if (Re >= turbulentFrom) return colebrookFactor(Re, relativeRoughness);
  const laminar = 64 / laminarTo;
  const turbulent = colebrookFactor(turbulentFrom, relativeRoughness);
  return laminar + ((Re - laminarTo) / (turbulentFrom - laminarTo)) * (turbulent - laminar);
}

const printedBetween = '64 / 2000 + (Re - 2000) / 2000 · (f₄₀₀₀ - 64 / 2000)';

/** {@link frictionFactor} with its sources. */
export const darcyFactor = {
  id: 'colebrook',
  title: 'Friction factor, Colebrook',
  printed: '1/√f = -2 · log10(ε / (3.7 · d) + 2.51 / (Re · √f))',
  printedAt: ({ Re }) =>
    Re <= 0 ? '0' : Re <= laminarTo ? '64 / Re' : Re < turbulentFrom ? printedBetween : undefined,
  note:
    'Turbulent flow, Re 4000 and more, by Colebrook; laminar flow, up to Re 2000, by 64 / Re; in between, where no law ' +
    'holds, a straight line to Colebrook’s factor at Re 4000 (f₄₀₀₀).',
  source: {
    source: sources['colebrook-1939'],
    at: { section: 'friction factor', checkedOn: '2026-11-25' },
    verified: 'textbook',
  },
  symbols: {
    Re: { unit: 'one', meaning: 'Reynolds number' },
    ε: { unit: 'm', meaning: 'roughness of the pipe' },
    d: { unit: 'm', meaning: 'bore' },
  },
  result: { unit: 'one', meaning: 'Darcy friction factor' },
  compute: ({ Re, ε, d }) => frictionFactor(Re, ε / d),
} as const satisfies Formula<'Re' | 'ε' | 'd'>;
