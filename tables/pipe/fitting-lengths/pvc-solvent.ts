import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const pvcSolventLengths: FittingLengths = {
  kind: 'grid',
  id: 'pvc-solvent-lengths',
  title: 'Equivalent length of PVC and CPVC schedule fittings',
  source: sources['plastic-pipe-manual'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Another table in print differs by up to 1.1 ft (ell at 2-1/2 in: 8.0 against 6.9).',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { ell: 1.5, 'ell-45': 0.8, 'tee-run': 1, 'tee-branch': 3.8 } },
    '3/4': { values: { ell: 2, 'ell-45': 1.1, 'tee-run': 1.4, 'tee-branch': 4.9 } },
    '1': { values: { ell: 2.5, 'ell-45': 1.4, 'tee-run': 1.7, 'tee-branch': 6 } },
    '1-1/4': { values: { ell: 3.8, 'ell-45': 1.8, 'tee-run': 2.3, 'tee-branch': 7.3 } },
    '1-1/2': { values: { ell: 4, 'ell-45': 2.1, 'tee-run': 2.7, 'tee-branch': 8.4 } },
    '2': { values: { ell: 5.7, 'ell-45': 2.6, 'tee-run': 4, 'tee-branch': 12 } },
    '2-1/2': { values: { ell: 6.9, 'ell-45': 3.1, 'tee-run': 4.9, 'tee-branch': 14.7 } },
    '3': { values: { ell: 7.9, 'ell-45': 4, 'tee-run': 6.1, 'tee-branch': 16.4 } },
    '4': { values: { ell: 11.4, 'ell-45': 5.1, 'tee-run': 7.9, 'tee-branch': 22 } },
  },
};
