import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

/** One value for a draw-off, whatever is piped to it. One loading unit stands for 0.1 L/s. */
export const loadingUnits = {
  kind: 'grid',
  id: 'en-806-3/loading-units',
  title: 'Loading units of draw-off points',
  source: sources['en-806-3'],
  at: { table: '2', page: '6', checkedOn: '2026-11-25' },
  verified: 'seen',
  note:
    'Read in a copy of the standard. What a pipe before the heater counts for a mixed draw-off was not seen: here it ' +
    'counts the draw-off once, by the rule of this project.',
  columns: { cold: 'lu', hot: 'lu', total: 'lu' },
  rows: {
    'wash basin, hand basin, bidet, WC cistern': { values: { total: 1 } },
    'domestic kitchen sink, washing machine, dishwasher, sink, shower head': { values: { total: 2 } },
    'urinal flush valve': { values: { total: 3 } },
    'domestic bath': { values: { total: 4 } },
    'tap in garden or garage': { values: { total: 5 } },
    'non-domestic kitchen sink DN 20, non-domestic bath': { values: { total: 8 } },
    'flush valve DN 20': { values: { total: 15 } },
  },
} as const satisfies GridTable<string, 'cold' | 'hot' | 'total'>;
