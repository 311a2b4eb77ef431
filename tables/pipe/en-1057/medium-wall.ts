import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const copperEn1057: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'en-1057',
  title: 'Copper tube, the usual walls of continental Europe',
  source: sources['en-1057'],
  at: { table: '3', checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'Outside diameters and walls read in two secondary prints of the standard’s table, a maker’s among them; bore = outside ' +
    'diameter less twice the wall. The maker’s print gives 0.133, 0.201, 0.314, 0.491, 0.804 and 1.963 l/m for 15, 18, 22, 28, 35 ' +
    'and 54 mm, which agree.',
  columns: { outside: 'mm', wall: 'mm', bore: 'mm' },
  rows: {
    '12x1': { values: { outside: 12, wall: 1, bore: 10 } },
    '15x1': { values: { outside: 15, wall: 1, bore: 13 } },
    '18x1': { values: { outside: 18, wall: 1, bore: 16 } },
    '22x1': { values: { outside: 22, wall: 1, bore: 20 } },
    '28x1.5': { values: { outside: 28, wall: 1.5, bore: 25 } },
    '35x1.5': { values: { outside: 35, wall: 1.5, bore: 32 } },
    '42x1.5': { values: { outside: 42, wall: 1.5, bore: 39 } },
    '54x2': { values: { outside: 54, wall: 2, bore: 50 } },
  },
};
