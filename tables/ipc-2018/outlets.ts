import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

export const outlets = {
  kind: 'grid',
  id: 'ipc-2018-outlets',
  title: 'Design of water distribution systems: flow rate and flowing pressure at the outlet of the supply',
  source: sources['ipc-2018'],
  at: { table: '604.3', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'A fixture that is not listed takes its maker’s data.',
  columns: { flow: 'gpm', pressure: 'psi' },
  rows: {
    'bathtub, balanced-pressure, thermostatic or combination valve': { values: { flow: 4, pressure: 20 } },
    'bidet, thermostatic mixing valve': { values: { flow: 2, pressure: 20 } },
    'combination fixture': { values: { flow: 4, pressure: 8 } },
    'dishwasher, residential': { values: { flow: 2.75, pressure: 8 } },
    'drinking fountain': { values: { flow: 0.75, pressure: 8 } },
    'laundry tray': { values: { flow: 4, pressure: 8 } },
    'lavatory, private': { values: { flow: 0.8, pressure: 8 } },
    'lavatory, private, mixing valve': { values: { flow: 0.8, pressure: 8 } },
    'lavatory, public': { values: { flow: 0.4, pressure: 8 } },
    shower: { values: { flow: 2.5, pressure: 8 } },
    'shower, balanced-pressure, thermostatic or combination valve': {
      values: { flow: 2.5, pressure: 20 },
      note: 'A lower flow rated by the maker of the shower valve takes the place of 2.5 gpm.',
    },
    'sillcock, hose bibb': { values: { flow: 5, pressure: 8 } },
    'sink, residential': { values: { flow: 1.75, pressure: 8 } },
    'sink, service': { values: { flow: 3, pressure: 8 } },
    'urinal, valve': { values: { flow: 12, pressure: 25 } },
    'water closet, blowout, flushometer valve': { values: { flow: 25, pressure: 45 } },
    'water closet, flushometer tank': { values: { flow: 1.6, pressure: 20 } },
    'water closet, siphonic, flushometer valve': { values: { flow: 25, pressure: 35 } },
    'water closet, tank, close coupled': { values: { flow: 3, pressure: 20 } },
    'water closet, tank, one piece': { values: { flow: 6, pressure: 20 } },
  },
} as const satisfies GridTable<string, 'flow' | 'pressure'>;
