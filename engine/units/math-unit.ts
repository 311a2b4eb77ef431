import type { MathUnit } from '../../node_modules/mathjs/lib/esm/type/unit/Unit.js';
import { createUnitClass } from '../../node_modules/mathjs/lib/esm/type/unit/Unit.js';
import { units } from '../../tables/units/definitions.ts';

export type { MathUnit };

/** mathjs holds the degree Fahrenheit and Rankine as exact fractions and asks for their class. */
function Ratio(numerator: number, denominator: number) {
  return { isFraction: true, valueOf: () => numerator / denominator };
}

function absent(): never {
  throw new Error('only plain numbers are computed with here');
}

/**
 * The unit class of mathjs over plain numbers.
 *
 * The file is named by its path because the entries of the package load every function of the library: 0.6 s and
 * 90 MB where this one file takes 0.02 s and 8 MB. The class is made, as mathjs provides for, from the operations
 * that it is given; ours are those of plain numbers.
 */
export const MathUnitClass = createUnitClass({
  config: { number: 'number', predictable: false },
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: Math.pow,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (a: number, b: number) => a === b,
  isNumeric: (value: unknown) => typeof value === 'number',
  format: String,
  number: Number,
  Complex: absent,
  BigNumber: absent,
  Fraction: Ratio,
});

// The library's psi is rounded at the eleventh digit; ours is exact by definition. It knows no flow coefficient.
MathUnitClass.createUnit({ psi: { definition: `${units.psi.factor} Pa` } }, { override: true });
MathUnitClass.createUnit({ Cv: {} });
