import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const steelSchedule40: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'asme-b36.10m-schedule-40',
  title: 'Steel pipe schedule 40',
  source: sources['asme-b36.10m'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note: 'The bores are those that IRC 2018 Table A.2.2 prints.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '1/2': { values: { outside: 0.84, wall: 0.109, bore: 0.622 } },
    '3/4': { values: { outside: 1.05, wall: 0.113, bore: 0.824 } },
    '1': { values: { outside: 1.315, wall: 0.133, bore: 1.049 } },
    '1-1/4': { values: { outside: 1.66, wall: 0.14, bore: 1.38 } },
    '1-1/2': { values: { outside: 1.9, wall: 0.145, bore: 1.61 } },
    '2': { values: { outside: 2.375, wall: 0.154, bore: 2.067 } },
    '2-1/2': { values: { outside: 2.875, wall: 0.203, bore: 2.469 } },
    '3': { values: { outside: 3.5, wall: 0.216, bore: 3.068 } },
    '4': { values: { outside: 4.5, wall: 0.237, bore: 4.026 } },
  },
};
