import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const peSdr9: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-d2737-sdr-9',
  title: 'PE service tube SDR-9, copper tube size, average bore',
  source: sources['astm-d2737'],
  at: { checkedOn: '2026-11-25' },
  verified: 'computed',
  note:
    'Outside diameter read in a catalogue; wall = outside diameter / 9; average bore = outside diameter less 2.12 times the ' +
    'wall, a rule recalled from the trade association. A second reading takes the mean wall of PEX instead and has 0.671, ' +
    '0.862, 1.054, 1.244 and 1.629 in, up to 0.3 % more.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '3/4': { values: { outside: 0.875, wall: 0.097, bore: 0.669 } },
    '1': { values: { outside: 1.125, wall: 0.125, bore: 0.86 } },
    '1-1/4': { values: { outside: 1.375, wall: 0.153, bore: 1.051 } },
    '1-1/2': { values: { outside: 1.625, wall: 0.181, bore: 1.241 } },
    '2': { values: { outside: 2.125, wall: 0.236, bore: 1.625 } },
  },
};
