import { sources } from '../sources.ts';
import type { GridRow, GridTable } from '../table.ts';
import type { MaterialId } from './names.ts';

type Column = 'length' | 'from' | 'to';
type StockTable = GridTable<string, Column>;

/** Rows are named `stick` or `coil` and the length; `from` and `to` are the sizes that are sold so, nominal or outside. */
const columns = { length: 'ft', from: 'in', to: 'in' } as const;
const at = { checkedOn: '2026-11-25' } as const;

const row = (
  length: number,
  from: number,
  to: number,
  more: Omit<GridRow, 'values'> = {},
): GridRow<Column> => ({
  values: { length, from, to },
  ...more,
});

const retail = { verified: 'common-practice', note: 'Seen in retail lists; no document.' } as const;

const remembered = (
  material: MaterialId,
  title: string,
  rows: StockTable['rows'],
  note?: string,
): StockTable => ({
  kind: 'grid',
  id: `stock-lengths-${material}`,
  title: `Stock lengths of ${title}`,
  source: sources['trade-practice'],
  at,
  verified: 'memory',
  ...(note === undefined ? {} : { note }),
  columns,
  rows,
});

const metricColumns = { length: 'm', from: 'mm', to: 'mm' } as const;

/** Metric pipe, by outside diameter. */
const metric = (material: MaterialId, title: string, rows: StockTable['rows']): StockTable => ({
  ...remembered(material, title, rows),
  columns: metricColumns,
});

const plasticStock: StockTable['rows'] = {
  'stick 5': row(5, 16, 63),
  'coil 25': row(25, 32, 32),
  'coil 50': row(50, 16, 32),
  'coil 100': row(100, 16, 25),
};

/**
 * Sticks and coils in which each material is usually sold. Most are from memory, and a supply house keeps what it
 * likes: a list to start from, to be set right by whoever orders.
 */
export const stockLengths: Readonly<Record<MaterialId, StockTable>> = {
  pex: remembered(
    'pex',
    'PEX',
    {
      'stick 10': row(10, 0.375, 2),
      'stick 20': row(20, 0.375, 3),
      'coil 100': row(100, 0.375, 2),
      'coil 300': row(300, 0.375, 1.5),
      'coil 500': row(500, 0.375, 1),
      'coil 1000': row(1000, 0.375, 0.75, {
        verified: 'seen-secondary',
        note: 'A trade magazine has coils up to 1000 ft in small sizes; that these end at 3/4 in is from memory.',
      }),
    },
    'The lengths and the sizes that are sold in each are recalled from the usual catalogue, but for the longest coil.',
  ),
  'copper-k': {
    kind: 'grid',
    id: 'stock-lengths-copper-k',
    title: 'Stock lengths of copper tube type K',
    source: sources['navy-plumbing-manual'],
    at,
    verified: 'seen',
    note: 'The page does not say which sizes are sold in each length; the sizes are from memory.',
    columns,
    rows: {
      'stick 12': row(12, 0.375, 4),
      'stick 20': row(20, 0.375, 4),
      'coil 40': row(40, 0.375, 2),
      'coil 60': row(60, 0.375, 1),
    },
  },
  'copper-l': {
    kind: 'grid',
    id: 'stock-lengths-copper-l',
    title: 'Stock lengths of copper tube type L',
    source: sources['copper-tube-sheet'],
    at,
    verified: 'seen',
    note: 'Sticks drawn or annealed, coils annealed.',
    columns,
    rows: {
      'stick 10': row(10, 0.25, 4, retail),
      'stick 20': row(20, 0.25, 10),
      'coil 40': row(40, 2, 2),
      'coil 45': row(45, 2, 2),
      'coil 60': row(60, 0.25, 1.5),
      'coil 100': row(100, 0.25, 1),
    },
  },
  'copper-m': {
    kind: 'grid',
    id: 'stock-lengths-copper-m',
    title: 'Stock lengths of copper tube type M',
    source: sources['navy-plumbing-manual'],
    at,
    verified: 'seen',
    note: 'Drawn tube only. The page does not say which sizes are sold in each length; the sizes are from memory.',
    columns,
    rows: {
      'stick 10': row(10, 0.375, 4, retail),
      'stick 12': row(12, 0.375, 4),
      'stick 20': row(20, 0.375, 4),
    },
  },
  cpvc: remembered('cpvc', 'CPVC', { 'stick 10': row(10, 0.5, 2), 'stick 20': row(20, 0.5, 2) }),
  pe: remembered('pe', 'PE service tube', {
    'coil 100': row(100, 0.75, 2),
    'coil 300': row(300, 0.75, 2),
    'coil 500': row(500, 0.75, 1),
  }),
  galvanized: remembered('galvanized', 'galvanized steel pipe', { 'stick 21': row(21, 0.5, 4) }),
  pvc: remembered('pvc', 'PVC', { 'stick 10': row(10, 0.5, 4), 'stick 20': row(20, 0.5, 4) }),
  'pe-x': metric('pe-x', 'PE-X S 3.2', plasticStock),
  'pe-x-s5': metric('pe-x-s5', 'PE-X S 5', plasticStock),
  'copper-en': metric('copper-en', 'copper tube EN 1057', {
    'stick 5': row(5, 12, 54),
    'coil 25': row(25, 18, 22),
    'coil 50': row(50, 12, 15),
  }),
  'copper-thin': metric('copper-thin', 'thin-wall copper tube EN 1057', {
    'stick 3': row(3, 15, 76.1),
    'stick 6': row(6, 15, 76.1),
  }),
  multilayer: metric('multilayer', 'multilayer pipe', plasticStock),
};
