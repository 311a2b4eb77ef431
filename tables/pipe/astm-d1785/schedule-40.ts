import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const pvcSchedule40: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-d1785-schedule-40',
  title: 'PVC pipe schedule 40, average bore',
  source: sources['astm-d1785'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'The smallest of three series in print: mean wall 0.010 in above the least, read in a distributor’s catalogue. A second ' +
    'series of average bores runs 0.002 to 0.006 in larger up to 2 in; an engineering data book prints 0.011 to 0.014 in ' +
    'more, with the wall 3 % above the least.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '1/2': { values: { outside: 0.84, wall: 0.109, bore: 0.602 } },
    '3/4': { values: { outside: 1.05, wall: 0.113, bore: 0.804 } },
    '1': { values: { outside: 1.315, wall: 0.133, bore: 1.029 } },
    '1-1/4': { values: { outside: 1.66, wall: 0.14, bore: 1.36 } },
    '1-1/2': { values: { outside: 1.9, wall: 0.145, bore: 1.59 } },
    '2': { values: { outside: 2.375, wall: 0.154, bore: 2.047 } },
    '2-1/2': { values: { outside: 2.875, wall: 0.203, bore: 2.445 } },
    '3': { values: { outside: 3.5, wall: 0.216, bore: 3.042 } },
    '4': { values: { outside: 4.5, wall: 0.237, bore: 3.998 } },
  },
};
