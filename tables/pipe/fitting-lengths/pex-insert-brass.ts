import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const pexInsertBrassLengths: FittingLengths = {
  kind: 'grid',
  id: 'pex-insert-brass-lengths',
  title: 'Equivalent length of brass crimp insert fittings (F1807 type)',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Feet of PEX SDR-9. The size of the first row is lost in print and taken as 3/8 from its place. No 45 degree ell is listed.',
  columns: fittingColumns,
  rows: {
    '3/8': { values: { ell: 9.2, 'tee-run': 2.9, 'tee-branch': 9.4, coupling: 2.9 } },
    '1/2': { values: { ell: 9.4, 'tee-run': 2.2, 'tee-branch': 10.4, coupling: 2 } },
    '3/4': { values: { ell: 9.4, 'tee-run': 1.9, 'tee-branch': 8.9, coupling: 0.6 } },
    '1': { values: { ell: 10, 'tee-run': 2.3, 'tee-branch': 11, coupling: 1.3 } },
  },
};
