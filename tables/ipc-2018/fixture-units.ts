import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

/**
 * The part columns are the printed ones: three quarters of the total, rounded; a fixture with one supply has its
 * total there.
 */
export const fixtureUnits = {
  kind: 'grid',
  id: 'ipc-2018-fixture-units',
  title: 'Load values assigned to fixtures, water supply fixture units',
  source: sources['ipc-2018'],
  at: { table: 'E103.3(2)', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Rows down to the service sink were read in a copy of the code; the rows after it are from memory.',
  columns: { cold: 'wsfu', hot: 'wsfu', total: 'wsfu' },
  rows: {
    'bathroom group, private, flush tank': { values: { cold: 2.7, hot: 1.5, total: 3.6 } },
    'bathroom group, private, flushometer valve': { values: { cold: 6, hot: 3, total: 8 } },
    'bathtub, private': { values: { cold: 1, hot: 1, total: 1.4 } },
    'bathtub, public': { values: { cold: 3, hot: 3, total: 4 } },
    'bidet, private': { values: { cold: 1.5, hot: 1.5, total: 2 } },
    'combination fixture, private': { values: { cold: 2.25, hot: 2.25, total: 3 } },
    'dishwashing machine, private': { values: { hot: 1.4, total: 1.4 } },
    'drinking fountain, offices': { values: { cold: 0.25, total: 0.25 } },
    'kitchen sink, private': { values: { cold: 1, hot: 1, total: 1.4 } },
    'kitchen sink, hotel or restaurant': { values: { cold: 3, hot: 3, total: 4 } },
    'laundry trays (1 to 3), private': { values: { cold: 1, hot: 1, total: 1.4 } },
    'lavatory, private': { values: { cold: 0.5, hot: 0.5, total: 0.7 } },
    'lavatory, public': { values: { cold: 1.5, hot: 1.5, total: 2 } },
    'service sink, offices': { values: { cold: 2.25, hot: 2.25, total: 3 } },
    'shower head, public': { values: { cold: 3, hot: 3, total: 4 }, verified: 'memory' },
    'shower head, private': { values: { cold: 1, hot: 1, total: 1.4 }, verified: 'memory' },
    'urinal, 1 in flushometer valve': { values: { cold: 10, total: 10 }, verified: 'memory' },
    'urinal, 3/4 in flushometer valve': { values: { cold: 5, total: 5 }, verified: 'memory' },
    'urinal, flush tank': { values: { cold: 3, total: 3 }, verified: 'memory' },
    'washing machine (8 lb), private': { values: { cold: 1, hot: 1, total: 1.4 }, verified: 'memory' },
    'washing machine (8 lb), public': { values: { cold: 2.25, hot: 2.25, total: 3 }, verified: 'memory' },
    'washing machine (15 lb), public': { values: { cold: 3, hot: 3, total: 4 }, verified: 'memory' },
    'water closet, private, flushometer valve': { values: { cold: 6, total: 6 }, verified: 'memory' },
    'water closet, private, flush tank': { values: { cold: 2.2, total: 2.2 }, verified: 'memory' },
    'water closet, public, flushometer valve': { values: { cold: 10, total: 10 }, verified: 'memory' },
    'water closet, public, flush tank': { values: { cold: 5, total: 5 }, verified: 'memory' },
    'water closet, flushometer tank': { values: { cold: 2, total: 2 }, verified: 'memory' },
  },
} as const satisfies GridTable<string, 'cold' | 'hot' | 'total'>;
