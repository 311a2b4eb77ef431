import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';
import type { MaterialId } from './names.ts';

const checkedOn = '2026-11-25';

const copper = {
  values: { c: 140, roughness: 0.0015 },
  note:
    'In print: 130 to 140 (range), 140 (fits the friction tables of types K and L that were read), 130 (fits one of ' +
    'type M), 145 (an engineering chart), 150 (the trade’s handbook, from memory). 140 is the middle, and close to ' +
    'Darcy-Weisbach in small tube at 60 F.',
} as const;

/** Of metric plastic pipe; European practice computes by roughness, so that a C is only carried over. */
const europeanPlastic = {
  values: { c: 150, roughness: 0.007 },
  verified: 'memory',
  note: '0.007 mm is recalled as what DIN 1988-300 prescribes for PE-X and multilayer pipe; C = 150 as for PEX.',
} as const;

/** `c` for Hazen-Williams, `roughness` absolute, for Colebrook-White. New, clean pipe. */
export const roughness: GridTable<MaterialId, 'c' | 'roughness'> = {
  kind: 'grid',
  id: 'pipe-roughness',
  title: 'Hazen-Williams coefficient and absolute roughness',
  source: sources['pipe-data-page'],
  at: { checkedOn },
  verified: 'seen-secondary',
  note: 'C holds for water near room temperature; it rises with temperature and size in smooth tube.',
  columns: { c: 'one', roughness: 'mm' },
  rows: {
    pex: {
      values: { c: 150, roughness: 0.0015 },
      cells: {
        c: { source: sources['pex-design-manual-a'], at: { page: '137', checkedOn }, verified: 'computed' },
        roughness: { source: sources['pex-manual-b'], at: { checkedOn }, verified: 'computed' },
      },
      note:
        'C = 150 is fitted to a manufacturer’s PEX friction table (2014) on the average bore; a smooth wall is fitted to ' +
        'another’s (2015). 0.007 mm is recalled from DIN 1988-300.',
    },
    'copper-k': copper,
    'copper-l': copper,
    'copper-m': copper,
    cpvc: {
      values: { c: 150, roughness: 0.0015 },
      cells: { c: { source: sources['cpvc-guide'], at: { checkedOn }, verified: 'seen' } },
      note: 'C = 150 stands in a manufacturer’s guide (2013) and in an engineering manual.',
    },
    pe: {
      values: { c: 150, roughness: 0.0015 },
      verified: 'memory',
      note: 'C = 150 is recalled as the trade association’s; an engineering reference page prints 140.',
    },
    galvanized: {
      values: { c: 120, roughness: 0.15 },
      note: 'New pipe; 100 is usual for aged pipe.',
    },
    pvc: { values: { c: 150, roughness: 0.0021 }, note: 'Roughness printed as 7e-6 ft.' },
    'pe-x': europeanPlastic,
    'pe-x-s5': europeanPlastic,
    'copper-en': copper,
    'copper-thin': copper,
    multilayer: europeanPlastic,
  },
};
