import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const copperTypeM: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-b88-type-m',
  title: 'Copper water tube, type M',
  source: sources['astm-b88'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note: 'Read in an engineering data book that quotes the standard. The standard has no 5/8 in; type M is drawn (hard) only.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '3/8': { values: { outside: 0.5, wall: 0.025, bore: 0.45 } },
    '1/2': { values: { outside: 0.625, wall: 0.028, bore: 0.569 } },
    '3/4': { values: { outside: 0.875, wall: 0.032, bore: 0.811 } },
    '1': { values: { outside: 1.125, wall: 0.035, bore: 1.055 } },
    '1-1/4': { values: { outside: 1.375, wall: 0.042, bore: 1.291 } },
    '1-1/2': { values: { outside: 1.625, wall: 0.049, bore: 1.527 } },
    '2': { values: { outside: 2.125, wall: 0.058, bore: 2.009 } },
    '2-1/2': { values: { outside: 2.625, wall: 0.065, bore: 2.495 } },
    '3': { values: { outside: 3.125, wall: 0.072, bore: 2.981 } },
    '4': { values: { outside: 4.125, wall: 0.095, bore: 3.935 } },
  },
};
