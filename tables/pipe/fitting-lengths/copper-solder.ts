import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const copperSolderLengths: FittingLengths = {
  kind: 'grid',
  id: 'copper-solder-lengths',
  title: 'Allowance for friction loss in copper fittings, as length of tube',
  source: sources['ipc-2018'],
  at: { table: 'E103.3(5)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'Not seen in print; two recollections agree cell by cell, though one numbers the table E103.3(6). The trade’s copper tube ' +
    'handbook has the same table. Threaded fittings are said to take twice these lengths.',
  columns: fittingColumns,
  rows: {
    '3/8': { values: { ell: 0.5, 'tee-branch': 1.5 } },
    '1/2': { values: { ell: 1, 'ell-45': 0.5, 'tee-branch': 2 } },
    '5/8': { values: { ell: 1.5, 'ell-45': 0.5, 'tee-branch': 2 } },
    '3/4': { values: { ell: 2, 'ell-45': 0.5, 'tee-branch': 3 } },
    '1': { values: { ell: 2.5, 'ell-45': 1, 'tee-branch': 4.5 } },
    '1-1/4': { values: { ell: 3, 'ell-45': 1, 'tee-run': 0.5, 'tee-branch': 5.5, coupling: 0.5 } },
    '1-1/2': { values: { ell: 4, 'ell-45': 1.5, 'tee-run': 0.5, 'tee-branch': 7, coupling: 0.5 } },
    '2': { values: { ell: 5.5, 'ell-45': 2, 'tee-run': 0.5, 'tee-branch': 9, coupling: 0.5 } },
    '2-1/2': { values: { ell: 7, 'ell-45': 2.5, 'tee-run': 0.5, 'tee-branch': 12, coupling: 0.5 } },
    '3': { values: { ell: 9, 'ell-45': 3.5, 'tee-run': 1, 'tee-branch': 15, coupling: 1 } },
    '4': { values: { ell: 12.5, 'ell-45': 5, 'tee-run': 1, 'tee-branch': 21, coupling: 1 } },
  },
};
