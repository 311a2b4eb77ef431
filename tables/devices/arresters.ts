import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

/** Sizes in rising order. */
export const arresterSizes: GridTable<string, 'unitsUpTo' | 'connection'> = {
  kind: 'grid',
  id: 'arrester-sizes',
  title: 'Water-hammer arresters by the fixture units of the branch',
  source: sources['pdi-wh-201'],
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'One arrester for a branch of up to 20 ft, another where it is longer. The standard counts fixture units by a table ' +
    'of its own, so that a code’s units only lead near it. Its smaller size AA is left out: its range was not found.',
  columns: { unitsUpTo: 'wsfu', connection: 'in' },
  rows: {
    A: { values: { unitsUpTo: 11, connection: 0.5 } },
    B: { values: { unitsUpTo: 32, connection: 0.75 } },
    C: { values: { unitsUpTo: 60, connection: 1 } },
    D: { values: { unitsUpTo: 113, connection: 1.25 } },
    E: { values: { unitsUpTo: 154, connection: 1.5 } },
    F: { values: { unitsUpTo: 330, connection: 2 } },
  },
};
