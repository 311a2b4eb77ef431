import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';

export const manifoldCapacity = {
  kind: 'grid',
  id: 'irc-2021-manifold-capacity',
  title: 'Manifold sizing: most demand',
  source: sources['irc-2021'],
  at: { table: 'P2903.8.1', checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'The plastic column is 12 ft/s and the metallic column 8 ft/s through the area of the nominal size, so a real, ' +
    'smaller bore runs faster.',
  columns: { plastic: 'gpm', metallic: 'gpm' },
  rows: {
    '3/4': { values: { plastic: 17, metallic: 11 } },
    '1': { values: { plastic: 29, metallic: 20 } },
    '1-1/4': { values: { plastic: 46, metallic: 31 } },
    '1-1/2': { values: { plastic: 66, metallic: 44 } },
  },
} as const satisfies GridTable<string, 'plastic' | 'metallic'>;
