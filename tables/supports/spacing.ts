import type { MaterialId } from '../pipe/names.ts';
import { sources } from '../sources.ts';
import type { GridTable, ValueTable } from '../table.ts';

const checkedOn = '2026-11-25';

export type SpacingRow =
  | 'copper-small'
  | 'copper-large'
  | 'pex-small'
  | 'pex-large'
  | 'cpvc-small'
  | 'cpvc-large'
  | 'pvc'
  | 'steel';

/** Rows of the table for pipe that a job may use; it has none for polyethylene service tube, which lies in the ground. */
export const supportSpacing: GridTable<SpacingRow, 'horizontal' | 'horizontalInches' | 'vertical'> = {
  kind: 'grid',
  id: 'support-spacing',
  title: 'Greatest spacing of pipe supports',
  source: sources['irc-2018'],
  at: { table: 'P2605.1', checkedOn },
  verified: 'seen',
  note:
    'The rows of PVC and steel are recalled. PEX up to 1 in is printed as 2.67 ft with 32 in beside it: the inches are ' +
    'used. A training page on a later edition asks for no more than 4 ft between supports of vertical PEX; the table is ' +
    'followed.',
  columns: { horizontal: 'ft', horizontalInches: 'in', vertical: 'ft' },
  rows: {
    'copper-small': { values: { horizontal: 6, vertical: 10 } },
    'copper-large': { values: { horizontal: 10, vertical: 10 } },
    'pex-small': { values: { horizontal: 2.67, horizontalInches: 32, vertical: 10 } },
    'pex-large': { values: { horizontal: 4, vertical: 10 } },
    'cpvc-small': { values: { horizontal: 3, vertical: 10 } },
    'cpvc-large': { values: { horizontal: 4, vertical: 10 } },
    pvc: { values: { horizontal: 4, vertical: 10 }, verified: 'memory' },
    steel: { values: { horizontal: 12, vertical: 15 }, verified: 'memory' },
  },
};

const copper = [
  { sizesUpTo: 1.25, row: 'copper-small' },
  { sizesUpTo: 4, row: 'copper-large' },
] as const;

const pex = [
  { sizesUpTo: 1, row: 'pex-small' },
  { sizesUpTo: 4, row: 'pex-large' },
] as const;

/** Rows that carry the note on guides. */
export const guidedRows: ReadonlySet<SpacingRow> = new Set<SpacingRow>([
  'pex-small',
  'pex-large',
  'cpvc-small',
  'cpvc-large',
  'pvc',
]);

export const guidesUpTo: ValueTable = {
  kind: 'value',
  id: 'support-guides',
  title: 'Largest nominal size that needs a guide halfway between vertical supports',
  source: sources['irc-2018'],
  at: { table: 'P2605.1, note b', checkedOn },
  verified: 'memory',
  note: 'The mark of the note stands at the rows of PEX, CPVC and PVC; its words are recalled.',
  unit: 'in',
  printed: 2,
};

/**
 * The rows of a material with the largest nominal size of each, in inches (metric pipe by its bore); none where the
 * table has no row. No European table of spacing was read: metric pipe takes the rows of its like.
 */
export const spacingRows: {
  readonly [material in MaterialId]: readonly { readonly sizesUpTo: number; readonly row: SpacingRow }[];
} = {
  pex,
  'copper-k': copper,
  'copper-l': copper,
  'copper-m': copper,
  cpvc: [
    { sizesUpTo: 1, row: 'cpvc-small' },
    { sizesUpTo: 4, row: 'cpvc-large' },
  ],
  pe: [],
  galvanized: [{ sizesUpTo: 4, row: 'steel' }],
  pvc: [{ sizesUpTo: 4, row: 'pvc' }],
  'pe-x': pex,
  'pe-x-s5': pex,
  'copper-en': copper,
  'copper-thin': copper,
  multilayer: pex,
};
