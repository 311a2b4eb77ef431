import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const pexSeries5: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'en-iso-15875-s-5',
  title: 'PE-X pipe, series S 5 (SDR 11)',
  source: sources['en-iso-15875'],
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'Not read in print. Walls of SDR 11; for 25, 40 and 50 mm and up the same walls were read for PE 100 of that ratio (3.0 mm ' +
    'at 32). 16 mm pipe is made to a wall of 1.8 mm for its handling, a recollection. The bore is that of the least wall.',
  columns: { outside: 'mm', wall: 'mm', bore: 'mm' },
  rows: {
    '16x1.8': { values: { outside: 16, wall: 1.8, bore: 12.4 } },
    '20x1.9': { values: { outside: 20, wall: 1.9, bore: 16.2 } },
    '25x2.3': { values: { outside: 25, wall: 2.3, bore: 20.4 } },
    '32x2.9': { values: { outside: 32, wall: 2.9, bore: 26.2 } },
    '40x3.7': { values: { outside: 40, wall: 3.7, bore: 32.6 } },
    '50x4.6': { values: { outside: 50, wall: 4.6, bore: 40.8 } },
    '63x5.8': { values: { outside: 63, wall: 5.8, bore: 51.4 } },
  },
};
