import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const multilayer: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'en-iso-21003',
  title: 'Multilayer pipe PE-X/Al/PE',
  source: sources['en-806-3'],
  at: { table: '3, multilayer', checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'Sizes and bores as a textbook of the trade prints the pipe-sizing table of EN 806-3 for PE-X/Al/PE. EN ISO 21003 itself was not ' +
    'read; makers differ in walls.',
  columns: { outside: 'mm', wall: 'mm', bore: 'mm' },
  rows: {
    '16x2': { values: { outside: 16, wall: 2, bore: 12 } },
    '18x2': { values: { outside: 18, wall: 2, bore: 14 } },
    '20x2.5': { values: { outside: 20, wall: 2.5, bore: 15 } },
    '26x3': { values: { outside: 26, wall: 3, bore: 20 } },
    '32x3': { values: { outside: 32, wall: 3, bore: 26 } },
    '40x3.5': { values: { outside: 40, wall: 3.5, bore: 33 } },
    '50x4': { values: { outside: 50, wall: 4, bore: 42 } },
    '63x4.5': { values: { outside: 63, wall: 4.5, bore: 54 } },
  },
};
