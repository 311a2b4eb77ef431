import { sources } from '../../tables/sources.ts';
import type { UnitId } from '../../tables/units/definitions.ts';
import type { Formula, FormulaSymbol } from './formula.ts';

/** Of steps of plain arithmetic: they need no source but themselves. */
export const ours: Formula['source'] = {
  source: sources.arithmetic,
  at: { checkedOn: '2026-11-25' },
  verified: 'computed',
};

interface Shape {
  readonly id: string;
  readonly title: string;
  readonly unit: UnitId;
  readonly meaning: string;
  /** What each term is, in order. */
  readonly terms: readonly string[];
}

const subscript = (index: number): string =>
  String(index + 1).replace(/\d/g, (digit) => '₀₁₂₃₄₅₆₇₈₉'[Number(digit)]!);

/** Names x1, x2, ... for any number of terms. */
export function names(count: number): string[] {
  return Array.from({ length: count }, (_, index) => `x${subscript(index)}`);
}

function shaped(
  shape: Shape,
  printed: (names: readonly string[]) => string,
  compute: (values: number[]) => number,
): Formula {
  const list = names(shape.terms.length);
  const symbols: Record<string, FormulaSymbol> = {};
  list.forEach((name, index) => {
    symbols[name] = { unit: shape.unit, meaning: shape.terms[index]! };
  });
  return {
    id: shape.id,
    title: shape.title,
    printed: printed(list),
    source: ours,
    symbols,
    result: { unit: shape.unit, meaning: shape.meaning },
    compute: (terms) => compute(list.map((name) => terms[name]!)),
  };
}

/** The sum of any number of terms; 0 of none. */
export function sumOf(shape: Shape): Formula {
  return shaped(
    shape,
    (list) => (list.length === 0 ? '0' : list.join(' + ')),
    (values) => values.reduce((sum, value) => sum + value, 0),
  );
}

/** The largest of one or more terms. */
export function largestOf(shape: Shape): Formula {
  return shaped(
    shape,
    (list) => (list.length === 1 ? list[0]! : `max(${list.join(', ')})`),
    (values) => Math.max(...values),
  );
}

/** The first term less all others. */
export function lessAll(shape: Shape): Formula {
  return shaped(
    shape,
    ([first, ...others]) => {
      if (others.length === 0) return first!;
      return others.length === 1 ? `${first} - ${others[0]}` : `${first} - (${others.join(' + ')})`;
    },
    ([first, ...others]) => first! - others.reduce((sum, value) => sum + value, 0),
  );
}

/** A count times one value. */
export function timesEach(id: string, title: string, unit: UnitId, meaning: string): Formula<'n' | 'x'> {
  return {
    id,
    title,
    printed: 'n · x',
    source: ours,
    symbols: { n: { unit: 'one', meaning: 'count' }, x: { unit, meaning } },
    result: { unit, meaning: title },
    compute: ({ n, x }) => n * x,
  };
}

/** A straight line between two rows of a table. */
export function between(
  id: string,
  title: string,
  x: FormulaSymbol,
  y: FormulaSymbol,
): Formula<'x' | 'x₁' | 'y₁' | 'x₂' | 'y₂'> {
  return {
    id,
    title,
    printed: 'y₁ + (y₂ - y₁) · (x - x₁) / (x₂ - x₁)',
    source: ours,
    symbols: {
      x,
      'x₁': { unit: x.unit, meaning: 'row below' },
      'y₁': { unit: y.unit, meaning: `${y.meaning} there` },
      'x₂': { unit: x.unit, meaning: 'row above' },
      'y₂': { unit: y.unit, meaning: `${y.meaning} there` },
    },
    result: y,
    compute: (terms) =>
      terms['y₁'] + ((terms['y₂'] - terms['y₁']) * (terms.x - terms['x₁'])) / (terms['x₂'] - terms['x₁']),
  };
}

/** A value read off a row of a table, or given, without further arithmetic. */
export function readOff(id: string, title: string, unit: UnitId, meaning: string): Formula<'y'> {
  return {
    id,
    title,
    printed: 'y',
    source: ours,
    symbols: { y: { unit, meaning } },
    result: { unit, meaning },
    compute: ({ y }) => y,
  };
}

/** A loss that goes with the square of the flow from one known point. */
export function bySquare(id: string, title: string): Formula<'y' | 'Q' | 'Q₁'> {
  return {
    id,
    title,
    printed: 'y · (Q / Q₁)²',
    source: ours,
    symbols: {
      y: { unit: 'psi', meaning: 'loss at the known point' },
      Q: { unit: 'gpm', meaning: 'design flow' },
      'Q₁': { unit: 'gpm', meaning: 'flow at the known point' },
    },
    result: { unit: 'psi', meaning: title },
    compute: (terms) => terms.y * (terms.Q / terms['Q₁']) ** 2,
  };
}
