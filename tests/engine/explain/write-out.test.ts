import { describe, expect, it } from 'vitest';
import type { Formula } from '../../../engine/explain/formula.ts';
import { columnOfWater, reducingValve } from '../../../engine/explain/pressure-formulas.ts';
import type { Explained, Step } from '../../../engine/explain/step.ts';
import { figures, writeOut } from '../../../engine/explain/write-out.ts';
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
    expect(written.arithmetic).toBe('1000 · 9.8066 · 3');
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
});
