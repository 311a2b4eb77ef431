import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const illinoisValveLengths: FittingLengths = {
  kind: 'grid',
  id: 'illinois-valve-lengths',
  title: 'Equivalent length of valves and compression stops',
  source: sources['il-890'],
  at: { table: 'Appendix A, Table Q', checkedOn: '2026-11-25' },
  verified: 'seen',
  note: 'The code gives it for every approved material.',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { 'compression-stop': 13 } },
    '3/4': { values: { 'compression-stop': 21 } },
    '1': { values: { 'compression-stop': 30, 'gate-valve': 1 } },
    '1-1/4': { values: { 'globe-valve': 53, 'gate-valve': 1 } },
    '1-1/2': { values: { 'globe-valve': 66, 'gate-valve': 2 } },
    '2': { values: { 'globe-valve': 90, 'gate-valve': 2 } },
    '2-1/2': { values: { 'gate-valve': 2 } },
    '3': { values: { 'gate-valve': 2 } },
  },
};
