import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const copperTypeK: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-b88-type-k',
  title: 'Copper water tube, type K',
  source: sources['astm-b88'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note: 'Read in an engineering data book that quotes the standard. One size chart prints the walls shifted by a row from 1-1/4 up (wrong).',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '3/8': { values: { outside: 0.5, wall: 0.049, bore: 0.402 } },
    '1/2': { values: { outside: 0.625, wall: 0.049, bore: 0.527 } },
    '5/8': { values: { outside: 0.75, wall: 0.049, bore: 0.652 } },
    '3/4': { values: { outside: 0.875, wall: 0.065, bore: 0.745 } },
    '1': { values: { outside: 1.125, wall: 0.065, bore: 0.995 } },
    '1-1/4': { values: { outside: 1.375, wall: 0.065, bore: 1.245 } },
    '1-1/2': { values: { outside: 1.625, wall: 0.072, bore: 1.481 } },
    '2': { values: { outside: 2.125, wall: 0.083, bore: 1.959 } },
    '2-1/2': { values: { outside: 2.625, wall: 0.095, bore: 2.435 } },
    '3': { values: { outside: 3.125, wall: 0.109, bore: 2.907 } },
    '4': { values: { outside: 4.125, wall: 0.134, bore: 3.857 } },
  },
};
