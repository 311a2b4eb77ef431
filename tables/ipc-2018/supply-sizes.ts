import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

export const supplySizes = {
  kind: 'grid',
  id: 'ipc-2018-supply-sizes',
  title: 'Minimum sizes of fixture water supply pipes',
  source: sources['ipc-2018'],
  at: { table: '604.5', checkedOn: '2026-11-25' },
  verified: 'corroborated',
  note:
    'Recalled; the same sizes were read in the adoption of the table by Chicago (Table 18-29-604.5, 2021). The supply ' +
    'pipe ends within 30 in of the fixture connection; it is not the branch.',
  columns: { size: 'in' },
  rows: {
    'bathtub, 60 x 32 in and smaller': { values: { size: 0.5 } },
    'bathtub, larger than 60 x 32 in': { values: { size: 0.5 } },
    bidet: { values: { size: 0.375 } },
    'combination sink and tray': { values: { size: 0.5 } },
    'dishwashing machine, domestic': { values: { size: 0.5 } },
    'drinking fountain': { values: { size: 0.375 } },
    'hose bibb': { values: { size: 0.5 } },
    'kitchen sink': { values: { size: 0.5 } },
    'laundry, 1 to 3 compartments': { values: { size: 0.5 } },
    lavatory: { values: { size: 0.375 } },
    'shower, single head': { values: { size: 0.5 } },
    'sink, flushing rim': { values: { size: 0.75 } },
    'sink, service': { values: { size: 0.5 } },
    'urinal, flush tank': { values: { size: 0.5 } },
    'urinal, flushometer valve': { values: { size: 0.75 } },
    'wall hydrant': { values: { size: 0.5 } },
    'water closet, flush tank': { values: { size: 0.375 } },
    'water closet, flushometer valve': { values: { size: 1 } },
    'water closet, flushometer tank': { values: { size: 0.375 } },
    'water closet, one piece': { values: { size: 0.5 } },
  },
} as const satisfies GridTable<string, 'size'>;
