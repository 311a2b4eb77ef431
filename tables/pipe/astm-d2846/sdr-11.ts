import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const cpvcSdr11: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-d2846-sdr-11',
  title: 'CPVC tubing SDR-11, average bore',
  source: sources['astm-d2846'],
  at: { table: 'I', checkedOn: '2026-11-25' },
  verified: 'computed',
  note:
    'Outside diameter, least wall and tolerance were read in a technical sheet that quotes the standard; the bore is outside ' +
    'diameter less twice the mean wall (least wall plus half its tolerance). Sheets print larger bores: 0.489 (largest ' +
    'bore) and 0.484 at 1/2 in; the three spread friction by about 22 %.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '1/2': { values: { outside: 0.625, wall: 0.068, bore: 0.469 } },
    '3/4': { values: { outside: 0.875, wall: 0.08, bore: 0.695 } },
    '1': { values: { outside: 1.125, wall: 0.102, bore: 0.901 } },
    '1-1/4': { values: { outside: 1.375, wall: 0.125, bore: 1.105 } },
    '1-1/2': { values: { outside: 1.625, wall: 0.148, bore: 1.309 } },
    '2': { values: { outside: 2.125, wall: 0.193, bore: 1.716 } },
  },
};
