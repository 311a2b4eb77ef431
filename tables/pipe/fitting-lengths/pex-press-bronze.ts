import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const pexPressBronzeLengths: FittingLengths = {
  kind: 'grid',
  id: 'pex-press-bronze-lengths',
  title: 'Equivalent length of bronze press insert fittings',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'The sizes above 1 in, which the brass crimp table of the same page lacks. Feet of PEX SDR-9.',
  columns: fittingColumns,
  rows: {
    '1-1/4': { values: { ell: 11, 'tee-run': 2, 'tee-branch': 11, coupling: 2 } },
    '1-1/2': { values: { ell: 13, 'tee-run': 2, 'tee-branch': 12, coupling: 2 } },
    '2': { values: { ell: 19, 'tee-run': 2, 'tee-branch': 18, coupling: 1 } },
  },
};
