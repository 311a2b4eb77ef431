import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const pexSeries32: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'en-iso-15875-s-3.2',
  title: 'PE-X pipe, series S 3.2 (SDR 7.4)',
  source: sources['en-iso-15875'],
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'Not read in print. Wall = outside diameter / 7.4, rounded up to 0.1 mm; from 25 mm the same walls were read for PE 100 of ' +
    'that ratio. The bore is that of the least wall: no tolerance was read, and the average bore is a few hundredths of a ' +
    'millimetre smaller.',
  columns: { outside: 'mm', wall: 'mm', bore: 'mm' },
  rows: {
    '16x2.2': { values: { outside: 16, wall: 2.2, bore: 11.6 } },
    '20x2.8': { values: { outside: 20, wall: 2.8, bore: 14.4 } },
    '25x3.5': { values: { outside: 25, wall: 3.5, bore: 18 } },
    '32x4.4': { values: { outside: 32, wall: 4.4, bore: 23.2 } },
    '40x5.5': { values: { outside: 40, wall: 5.5, bore: 29 } },
    '50x6.9': { values: { outside: 50, wall: 6.9, bore: 36.2 } },
    '63x8.6': { values: { outside: 63, wall: 8.6, bore: 45.8 } },
  },
};
