import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const upcThreadedLengths: FittingLengths = {
  kind: 'grid',
  id: 'upc-threaded-lengths',
  title: 'Allowance for friction loss in valves and threaded fittings',
  source: sources['upc-2018'],
  at: { table: 'A 104.4(1)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'Coupling and straight run of a tee share a column. A footnote halves the lengths for streamlined solder fittings (from ' +
    'memory).',
  columns: fittingColumns,
  rows: {
    '3/8': {
      values: {
        ell: 1,
        'ell-45': 0.6,
        'tee-run': 0.3,
        'tee-branch': 1.5,
        coupling: 0.3,
        'gate-valve': 0.2,
        'globe-valve': 8,
      },
    },
    '1/2': {
      values: {
        ell: 2,
        'ell-45': 1.2,
        'tee-run': 0.6,
        'tee-branch': 3,
        coupling: 0.6,
        'gate-valve': 0.4,
        'globe-valve': 15,
      },
    },
    '3/4': {
      values: {
        ell: 2.5,
        'ell-45': 1.5,
        'tee-run': 0.8,
        'tee-branch': 4,
        coupling: 0.8,
        'gate-valve': 0.5,
        'globe-valve': 20,
      },
    },
    '1': {
      values: {
        ell: 3,
        'ell-45': 1.8,
        'tee-run': 0.9,
        'tee-branch': 5,
        coupling: 0.9,
        'gate-valve': 0.6,
        'globe-valve': 25,
      },
    },
    '1-1/4': {
      values: {
        ell: 4,
        'ell-45': 2.4,
        'tee-run': 1.2,
        'tee-branch': 6,
        coupling: 1.2,
        'gate-valve': 0.8,
        'globe-valve': 35,
      },
    },
    '1-1/2': {
      values: {
        ell: 5,
        'ell-45': 3,
        'tee-run': 1.5,
        'tee-branch': 7,
        coupling: 1.5,
        'gate-valve': 1,
        'globe-valve': 45,
      },
    },
    '2': {
      values: {
        ell: 7,
        'ell-45': 4,
        'tee-run': 2,
        'tee-branch': 10,
        coupling: 2,
        'gate-valve': 1.3,
        'globe-valve': 55,
      },
    },
    '2-1/2': {
      values: {
        ell: 8,
        'ell-45': 5,
        'tee-run': 2.5,
        'tee-branch': 12,
        coupling: 2.5,
        'gate-valve': 1.6,
        'globe-valve': 65,
      },
    },
    '3': {
      values: {
        ell: 10,
        'ell-45': 6,
        'tee-run': 3,
        'tee-branch': 15,
        coupling: 3,
        'gate-valve': 2,
        'globe-valve': 80,
      },
    },
    '4': {
      values: {
        ell: 14,
        'ell-45': 8,
        'tee-run': 4,
        'tee-branch': 21,
        coupling: 4,
        'gate-valve': 2.7,
        'globe-valve': 125,
      },
    },
  },
};
