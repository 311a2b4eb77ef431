import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const copperTypeL: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-b88-type-l',
  title: 'Copper water tube, type L',
  source: sources['astm-b88'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'Read in an engineering data book and a rating sheet that quote the standard. At 4 in the wall is 0.110 in three prints and ' +
    '0.114 in one; at 1-1/4 in one print has 0.050 (a slip: its weight belongs to 0.055).',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '3/8': { values: { outside: 0.5, wall: 0.035, bore: 0.43 } },
    '1/2': { values: { outside: 0.625, wall: 0.04, bore: 0.545 } },
    '5/8': { values: { outside: 0.75, wall: 0.042, bore: 0.666 } },
    '3/4': { values: { outside: 0.875, wall: 0.045, bore: 0.785 } },
    '1': { values: { outside: 1.125, wall: 0.05, bore: 1.025 } },
    '1-1/4': { values: { outside: 1.375, wall: 0.055, bore: 1.265 } },
    '1-1/2': { values: { outside: 1.625, wall: 0.06, bore: 1.505 } },
    '2': { values: { outside: 2.125, wall: 0.07, bore: 1.985 } },
    '2-1/2': { values: { outside: 2.625, wall: 0.08, bore: 2.465 } },
    '3': { values: { outside: 3.125, wall: 0.09, bore: 2.945 } },
    '4': { values: { outside: 4.125, wall: 0.11, bore: 3.905 } },
  },
};
