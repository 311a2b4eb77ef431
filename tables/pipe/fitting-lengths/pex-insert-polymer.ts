import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const pexInsertPolymerLengths: FittingLengths = {
  kind: 'grid',
  id: 'pex-insert-polymer-lengths',
  title: 'Equivalent length of polymer crimp insert fittings (F2159 type)',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Feet of PEX SDR-9. The size of the first row is lost in print and taken as 3/8 from its place. No 45 degree ell is listed.',
  columns: fittingColumns,
  rows: {
    '3/8': { values: { ell: 22.3, coupling: 10.9 } },
    '1/2': { values: { ell: 16.5, 'tee-run': 7.2, 'tee-branch': 17.9, coupling: 7.1 } },
    '3/4': { values: { ell: 17.4, 'tee-run': 6.6, 'tee-branch': 17.7, coupling: 4.8 } },
    '1': { values: { ell: 18, 'tee-run': 6, 'tee-branch': 17, coupling: 4.5 } },
  },
};
