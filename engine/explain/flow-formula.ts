import { sources } from '../../tables/sources.ts';
import { names } from './arithmetic.ts';
import type { Formula, FormulaSymbol } from './formula.ts';

/**
 * Design flow of a run: its demand or its largest fixture, plus what runs for long, and never less than any run it
 * feeds.
 *
 * @param fed what each fed run is called
 * @param held the fed run whose flow is more than the run's own
 */
export function flowFormula(fed: readonly string[], held?: string): Formula {
  const list = names(fed.length);
  const symbols: Record<string, FormulaSymbol> = {
    D: { unit: 'gpm', meaning: 'demand of the fixtures served' },
    L: { unit: 'gpm', meaning: 'largest single fixture' },
    C: { unit: 'gpm', meaning: 'flow that runs for long' },
  };
  list.forEach((name, index) => {
    symbols[name] = { unit: 'gpm', meaning: `flow of ${fed[index]}` };
  });
  return {
    id: 'flow',
    title: held === undefined ? 'Design flow' : `Design flow, held at that of ${held}, which it feeds`,
    printed: list.length === 0 ? 'max(D, L) + C' : `max(max(D, L) + C, ${list.join(', ')})`,
    source: {
      source: sources.hightap,
      at: { section: 'design flow of a run', checkedOn: '2026-11-25' },
      verified: 'common-practice',
    },
    symbols,
    result: { unit: 'gpm', meaning: 'design flow' },
    compute: (terms) =>
      Math.max(Math.max(terms.D!, terms.L!) + terms.C!, ...list.map((name) => terms[name]!)),
  };
}

/** Demand where the units are below the first row of the table: the fixtures' own flows, up to that row's flow. */
export const belowTable = {
  id: 'below-table',
  title: "Demand below the table's first row",
  printed: 'min(S, F)',
  source: {
    source: sources.hightap,
    at: { section: 'design flow of a run', checkedOn: '2026-11-25' },
    verified: 'common-practice',
  },
  symbols: {
    S: { unit: 'gpm', meaning: "sum of the fixtures' own flows" },
    F: { unit: 'gpm', meaning: "flow of the table's first row" },
  },
  result: { unit: 'gpm', meaning: 'demand' },
  compute: ({ S, F }) => Math.min(S, F),
} as const satisfies Formula<'S' | 'F'>;
