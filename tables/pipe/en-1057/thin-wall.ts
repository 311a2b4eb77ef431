import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const copperEn1057Thin: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'en-1057-thin-wall',
  title: 'Copper tube, thin walls usual in Britain',
  source: sources['en-1057'],
  at: { table: '3', checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'The half-hard series R250 that British stockists call table X, read in a stockist’s list; bore = outside diameter less twice ' +
    'the wall.',
  columns: { outside: 'mm', wall: 'mm', bore: 'mm' },
  rows: {
    '15x0.7': { values: { outside: 15, wall: 0.7, bore: 13.6 } },
    '22x0.9': { values: { outside: 22, wall: 0.9, bore: 20.2 } },
    '28x0.9': { values: { outside: 28, wall: 0.9, bore: 26.2 } },
    '35x1.2': { values: { outside: 35, wall: 1.2, bore: 32.6 } },
    '42x1.2': { values: { outside: 42, wall: 1.2, bore: 39.6 } },
    '54x1.2': { values: { outside: 54, wall: 1.2, bore: 51.6 } },
    '66.7x1.2': { values: { outside: 66.7, wall: 1.2, bore: 64.3 } },
    '76.1x1.5': { values: { outside: 76.1, wall: 1.5, bore: 73.1 } },
  },
};
