import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const pexPressPolymerLengths: FittingLengths = {
  kind: 'grid',
  id: 'pex-press-polymer-lengths',
  title: 'Equivalent length of polymer press insert fittings',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'What the polymer crimp table of the same page lacks: the tees at 3/8 in and the sizes above 1 in. Feet of PEX SDR-9.',
  columns: fittingColumns,
  rows: {
    '3/8': { values: { 'tee-run': 6.5, 'tee-branch': 14.7 } },
    '1-1/4': { values: { ell: 18.6, 'tee-run': 6.4, 'tee-branch': 18.7, coupling: 4 } },
    '1-1/2': { values: { ell: 29.4, 'tee-run': 7.9, 'tee-branch': 28.3, coupling: 5.2 } },
    '2': { values: { ell: 36.4, 'tee-run': 10.2, 'tee-branch': 37.5, coupling: 8.9 } },
  },
};
