import type { GridTable } from '../../table.ts';
import type { FittingKind } from '../names.ts';

/** Equivalent length of straight pipe by nominal size; a table leaves blank what it does not print. */
export type FittingLengths = GridTable<string, FittingKind>;

export const fittingColumns: FittingLengths['columns'] = {
  ell: 'ft',
  'ell-45': 'ft',
  'tee-run': 'ft',
  'tee-branch': 'ft',
  coupling: 'ft',
  'ball-valve': 'ft',
  'gate-valve': 'ft',
  'globe-valve': 'ft',
  'butterfly-valve': 'ft',
  'check-valve': 'ft',
  'compression-stop': 'ft',
  'corporation-stop': 'ft',
  'curb-stop': 'ft',
};
