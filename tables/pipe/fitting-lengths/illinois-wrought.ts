import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const illinoisWroughtLengths: FittingLengths = {
  kind: 'grid',
  id: 'illinois-wrought-lengths',
  title: 'Equivalent length of wrought fittings',
  source: sources['il-890'],
  at: { table: 'Appendix A, Table Q', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'Its cast fittings run two to five times as long. At 1/2 in it prints 0.5 ft for the ell where the model code has 1 ft.',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { ell: 0.5, 'ell-45': 0.5, 'tee-run': 0.5, 'tee-branch': 1 } },
    '3/4': { values: { ell: 1, 'ell-45': 0.5, 'tee-run': 0.5, 'tee-branch': 2 } },
    '1': { values: { ell: 1, 'ell-45': 1, 'tee-run': 0.5, 'tee-branch': 3 } },
    '1-1/4': { values: { ell: 2, 'ell-45': 1, 'tee-run': 0.5, 'tee-branch': 4 } },
    '1-1/2': { values: { ell: 2, 'ell-45': 2, 'tee-run': 1, 'tee-branch': 5 } },
    '2': { values: { ell: 2, 'ell-45': 2, 'tee-run': 1, 'tee-branch': 7 } },
    '2-1/2': { values: { ell: 2, 'ell-45': 3, 'tee-run': 2, 'tee-branch': 9 } },
    '3': { values: { ell: 3, 'ell-45': 4 } },
  },
};
