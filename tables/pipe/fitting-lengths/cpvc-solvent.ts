import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const cpvcSolventLengths: FittingLengths = {
  kind: 'grid',
  id: 'cpvc-solvent-lengths',
  title: 'Equivalent length of CPVC fittings, copper tube size',
  source: sources['cpvc-guide'],
  at: { page: '5', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Feet of CPVC SDR-11.',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { ell: 1.6, 'ell-45': 0.8, 'tee-run': 1, 'tee-branch': 3.1 } },
    '3/4': { values: { ell: 2.1, 'ell-45': 1.1, 'tee-run': 1.4, 'tee-branch': 4.1 } },
    '1': { values: { ell: 2.6, 'ell-45': 1.4, 'tee-run': 1.7, 'tee-branch': 5.2 } },
    '1-1/4': { values: { ell: 3.5, 'ell-45': 1.8, 'tee-run': 2.3, 'tee-branch': 6.9 } },
    '1-1/2': { values: { ell: 4, 'ell-45': 2.1, 'tee-run': 2.7, 'tee-branch': 8 } },
    '2': { values: { ell: 5.5, 'ell-45': 2.8, 'tee-run': 3.4, 'tee-branch': 10.3 } },
  },
};
