import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

const fromIpc = 'Not in the IRC, which lists no flushometer valve: IPC 2018 Table 604.3, which was read.';

export const outlets = {
  kind: 'grid',
  id: 'irc-2021-outlets',
  title: 'Required capacities at the point of outlet discharge',
  source: sources['irc-2021'],
  at: { table: 'P2903.1', checkedOn: '2026-11-25' },
  verified: 'seen',
  columns: { flow: 'gpm', pressure: 'psi' },
  rows: {
    'bathtub, balanced-pressure, thermostatic or combination valve': { values: { flow: 4, pressure: 20 } },
    'bidet, thermostatic mixing valve': { values: { flow: 2, pressure: 20 } },
    dishwasher: { values: { flow: 2.75, pressure: 8 } },
    'laundry tray': { values: { flow: 4, pressure: 8 } },
    lavatory: { values: { flow: 0.8, pressure: 8 } },
    'shower, balanced-pressure, thermostatic or combination valve': {
      values: { flow: 2.5, pressure: 20 },
      note: 'A lower flow rated by the maker of the shower valve takes the place of 2.5 gpm.',
    },
    'sillcock, hose bibb': { values: { flow: 5, pressure: 8 } },
    sink: { values: { flow: 1.75, pressure: 8 } },
    'water closet, flushometer tank': { values: { flow: 1.6, pressure: 20 } },
    'water closet, tank, close coupled': { values: { flow: 3, pressure: 20 } },
    'water closet, tank, one-piece': { values: { flow: 6, pressure: 20 } },
    'water closet, siphonic, flushometer valve (IPC 2018)': {
      values: { flow: 25, pressure: 35 },
      note: fromIpc,
    },
    'urinal, valve (IPC 2018)': { values: { flow: 12, pressure: 25 }, note: fromIpc },
  },
} as const satisfies GridTable<string, 'flow' | 'pressure'>;
