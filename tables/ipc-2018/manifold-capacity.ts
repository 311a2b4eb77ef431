import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

export const manifoldCapacity = {
  kind: 'grid',
  id: 'ipc-2018-manifold-capacity',
  title: 'Manifold sizing: most flow at 8 ft/s',
  source: sources['ipc-2018'],
  at: { table: '604.10.1', checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'The 8 ft/s column, for plastic and metal alike; the table also prints 2, 6, 10, 15 and 22 gpm at 4 ft/s. Each ' +
    'figure is the velocity times the area of the nominal size, so a real, smaller bore runs faster.',
  columns: { plastic: 'gpm', metallic: 'gpm' },
  rows: {
    '1/2': { values: { plastic: 5, metallic: 5 } },
    '3/4': { values: { plastic: 11, metallic: 11 } },
    '1': { values: { plastic: 20, metallic: 20 } },
    '1-1/4': { values: { plastic: 31, metallic: 31 } },
    '1-1/2': { values: { plastic: 44, metallic: 44 } },
  },
} as const satisfies GridTable<string, 'plastic' | 'metallic'>;
