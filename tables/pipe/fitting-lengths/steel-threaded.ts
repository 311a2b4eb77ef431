import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const steelThreadedLengths: FittingLengths = {
  kind: 'grid',
  id: 'steel-threaded-lengths',
  title: 'Equivalent length of threaded fittings in schedule 40 pipe',
  source: sources['irc-2018'],
  at: { table: 'A.2.2', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'From the fuel-gas appendix, whose lengths are of the same threaded fittings: L/D 30, 14 and 60.',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { ell: 1.55, 'ell-45': 0.73, 'tee-branch': 3.1 } },
    '3/4': { values: { ell: 2.06, 'ell-45': 0.96, 'tee-branch': 4.12 } },
    '1': { values: { ell: 2.62, 'ell-45': 1.22, 'tee-branch': 5.24 } },
    '1-1/4': { values: { ell: 3.45, 'ell-45': 1.61, 'tee-branch': 6.9 } },
    '1-1/2': { values: { ell: 4.02, 'ell-45': 1.88, 'tee-branch': 8.04 } },
    '2': { values: { ell: 5.17, 'ell-45': 2.41, 'tee-branch': 10.3 } },
    '2-1/2': { values: { ell: 6.16, 'ell-45': 2.88, 'tee-branch': 12.3 } },
    '3': { values: { ell: 7.67, 'ell-45': 3.58, 'tee-branch': 15.3 } },
    '4': { values: { ell: 10.1, 'ell-45': 4.7, 'tee-branch': 20.2 } },
  },
};
