import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

const fromIpc =
  'Not in the IRC, which lists no flushometer valve: IPC 2018 Table E103.3(2), private use, from memory.';

/** The code prints hot, cold, combined; the columns here bear its names for the same thing in our order. */
export const fixtureUnits = {
  kind: 'grid',
  id: 'irc-2021-fixture-units',
  title: 'Water-supply fixture-unit values for various plumbing fixtures and fixture groups',
  source: sources['irc-2021'],
  at: { table: 'P2903.6', checkedOn: '2026-11-25' },
  verified: 'memory',
  note: 'The table itself was not seen; "corroborated" rows equal a row of IPC 2018 Table E103.3(2) that was read.',
  columns: { cold: 'wsfu', hot: 'wsfu', total: 'wsfu' },
  rows: {
    bathtub: { values: { cold: 1, hot: 1, total: 1.4 }, verified: 'corroborated' },
    'clothes washer': { values: { cold: 1, hot: 1, total: 1.4 } },
    dishwasher: { values: { hot: 1.4, total: 1.4 }, verified: 'corroborated' },
    'full-bath group': { values: { cold: 2.7, hot: 1.5, total: 3.6 }, verified: 'corroborated' },
    'half-bath group': { values: { cold: 2.5, hot: 0.5, total: 2.6 } },
    'hose bibb': {
      values: { cold: 2.5, total: 2.5 },
      note: 'Assumes 2.5 gpm at the outlet (from memory).',
    },
    'kitchen group': { values: { cold: 1, hot: 1.9, total: 2.5 } },
    'kitchen sink': { values: { cold: 1, hot: 1, total: 1.4 }, verified: 'corroborated' },
    'laundry group': { values: { cold: 1.8, hot: 1.8, total: 2.5 } },
    'laundry tub': { values: { cold: 1, hot: 1, total: 1.4 }, verified: 'corroborated' },
    lavatory: { values: { cold: 0.5, hot: 0.5, total: 0.7 }, verified: 'corroborated' },
    'shower stall': { values: { cold: 1, hot: 1, total: 1.4 } },
    'water closet (tank type)': { values: { cold: 2.2, total: 2.2 } },
    'water closet, flushometer valve (IPC 2018)': { values: { cold: 6, total: 6 }, note: fromIpc },
    'urinal, 3/4 in flushometer valve (IPC 2018)': { values: { cold: 5, total: 5 }, note: fromIpc },
  },
} as const satisfies GridTable<string, 'cold' | 'hot' | 'total'>;
