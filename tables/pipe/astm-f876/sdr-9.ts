import { sources } from '../../sources.ts';
import type { GridTable } from '../../table.ts';

export const pexSdr9: GridTable<string, 'outside' | 'wall' | 'bore'> = {
  kind: 'grid',
  id: 'astm-f876-sdr-9',
  title: 'PEX tubing SDR-9, average bore',
  source: sources['astm-f876'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'The bore is the average one: outside diameter less twice the mean wall (least wall plus half its tolerance), as a ' +
    'manufacturer’s manual (2014) prints it. A county data sheet prints 0.360, 0.485, 0.584, 0.681 and 0.875 in for 3/8 ' +
    'to 1, the largest bore that the standard permits; it flatters friction by 7 to 10 %. Wall: the least one.',
  columns: { outside: 'in', wall: 'in', bore: 'in' },
  rows: {
    '3/8': {
      values: { outside: 0.5, wall: 0.07, bore: 0.35 },
      note: 'Outside diameter and wall read in a county data sheet; the bore by the rule of the average wall.',
    },
    '1/2': { values: { outside: 0.625, wall: 0.07, bore: 0.475 } },
    '5/8': { values: { outside: 0.75, wall: 0.083, bore: 0.574 } },
    '3/4': { values: { outside: 0.875, wall: 0.097, bore: 0.671 } },
    '1': {
      values: { outside: 1.125, wall: 0.125, bore: 0.863 },
      note: 'Printed so; the rule of the average wall gives 0.862, the water content of a government problem set 0.865.',
    },
    '1-1/4': {
      values: { outside: 1.375, wall: 0.153, bore: 1.054 },
      verified: 'computed',
      note: 'Wall = outside diameter / 9. A second reading has 1.055, from the water content of a government problem set.',
    },
    '1-1/2': {
      values: { outside: 1.625, wall: 0.181, bore: 1.244 },
      verified: 'computed',
      note: 'Wall = outside diameter / 9. A second reading has 1.245, from the water content of a government problem set.',
    },
    '2': {
      values: { outside: 2.125, wall: 0.236, bore: 1.629 },
      verified: 'computed',
      note: 'Wall = outside diameter / 9.',
    },
    '2-1/2': {
      values: { outside: 2.625, wall: 0.292, bore: 2.011 },
      verified: 'computed',
      note: 'Bore from the pairs of flow and velocity in a manufacturer’s manual (2015): 14.85 gpm at 1.5 ft/s.',
    },
    '3': { values: { outside: 3.125, wall: 0.347, bore: 2.396 }, verified: 'memory' },
  },
};
