import { describe, expect, it } from 'vitest';
import type { Formula } from '../../../engine/explain/formula.ts';
import { columnOfWater, reducingValve } from '../../../engine/explain/pressure-formulas.ts';
import type { Explained, Step } from '../../../engine/explain/step.ts';
import { computeStep } from '../../../engine/explain/worksheet.ts';
import { figures, writeOut } from '../../../engine/explain/write-out.ts';
import { darcyFactor } from '../../../engine/hydraulics/colebrook.ts';
import { hazenWilliams } from '../../../engine/hydraulics/hazen-williams.ts';
import { velocity } from '../../../engine/hydraulics/velocity.ts';
import { toSI, type UnitId } from '../../../tables/units/definitions.ts';

const given = (value: number, unit: UnitId): Explained => ({
  from: 'given',
  value: toSI(value, unit),
  unit,
  field: 'field',
  typed: `${value} ${unit}`,
});

function step<S extends string>(formula: Formula<S>, terms: Record<S, Explained>, value: number): Step {
  return { id: 'run.quantity', formula: formula as unknown as Formula, value, terms };
}

describe('figures', () => {
  it.each([
    [0, '0'],
    [12, '12'],
    [1234567, '1234600'],
    [2.345678901, '2.3457'],
    [0.00123456789, '0.0012346'],
    [-2.5, '-2.5'],
    [9.80665, '9.80665'],
    [123456.7, '123460'],
    [12345678, '1.2346e+7'],
    [0.00000123456, '1.2346e-6'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
  ])('%f is %s', (value, text) => expect(figures(value)).toBe(text));
});

describe('a step written out', () => {
  it('has the formula, the numbers in the units of its source, and the result with its unit', () => {
    const terms = { ρ: given(1000, 'kg/m3'), g: given(9.80665, 'm/s2'), z: given(3, 'm') };
    const written = writeOut(step(columnOfWater, terms, 29419.95));
    expect(written.formula).toBe('ρ · g · z');
    expect(written.arithmetic).toBe('1000 · 9.80665 · 3');
    expect(written.result).toBe('29420 Pa');
  });

  it('drops the result’s own name on the left', () => {
    const terms = { Q: given(0.001, 'm3/s'), d: given(0.02, 'm') };
    const { arithmetic, formula } = writeOut(step(velocity, terms, 3.1831));
    expect(formula).toBe('v = Q / (π · d² / 4)');
    expect(arithmetic).toBe('0.001 / (π · 0.02² / 4)');
  });

  it('leaves the names of functions alone and puts brackets round negative numbers', () => {
    const terms = { p: given(62, 'psi'), s: given(-3, 'psi'), f: given(7.25, 'psi') };
    const { arithmetic, result } = writeOut(step(reducingValve, terms, toSI(-10.25, 'psi')));
    expect(arithmetic).toBe('min(62, (-3)) - 7.25');
    expect(result).toBe('-10.25 psi');
  });

  /** Re 30 000 in smooth tube of 17 mm: by the Moody chart 0.0236 or so. */
  it('keeps both sides of Colebrook, which stands for f inside, and says what f is', () => {
    const terms = { Re: given(30000, 'one'), ε: given(0.0000015, 'm'), d: given(0.017, 'm') };
    const { formula, arithmetic, result } = writeOut(step(darcyFactor, terms, 0.0236));
    expect(formula).toBe('1/√f = -2 · log10(ε / (3.7 · d) + 2.51 / (Re · √f))');
    expect(arithmetic).toBe('1/√f = -2 · log10(1.5000e-6 / (3.7 · 0.017) + 2.51 / (30000 · √f)); so f');
    expect(result).toBe('0.0236');
  });

  it('writes the law of the flow that there is: 64 / Re while laminar, a line up to Colebrook', () => {
    const at = (Re: number) =>
      writeOut(step(darcyFactor, { Re: given(Re, 'one'), ε: given(0, 'm'), d: given(0.017, 'm') }, 0))
        .arithmetic;
    expect(at(1600)).toBe('64 / 1600');
    expect(at(3000)).toBe('64 / 2000 + (3000 - 2000) / 2000 · (f₄₀₀₀ - 64 / 2000)');
    expect(at(0)).toBe('0');
  });

  it('gives the head of Hazen-Williams its unit, feet per 100 ft', () => {
    // 0.2083 x 71.1214 x (100/100)^1.852 at 10 gpm in 1 in: 10^1.852 = 71.1214.
    const terms = { Q: given(10, 'gpm'), C: given(100, 'one'), d: given(1, 'in') };
    const value = computeStep(hazenWilliams as unknown as Formula, terms);
    const { result } = writeOut(step(hazenWilliams, terms, value));
    expect(value).toBeCloseTo((0.2083 * 71.1214) / 100, 5);
    expect(result).toBe('14.815 ft/100 ft');
  });

  it('lists each input with its unit', () => {
    const terms = { ρ: given(1000, 'kg/m3'), g: given(9.80665, 'm/s2'), z: given(3, 'm') };
    expect(writeOut(step(columnOfWater, terms, 29419.95)).inputs).toEqual({
      ρ: '1000 kg/m³',
      g: '9.80665 m/s²',
      z: '3 m',
    });
  });
});
