import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const copperValveLengths: FittingLengths = {
  kind: 'grid',
  id: 'copper-valve-lengths',
  title: 'Allowance for friction loss in valves, as length of copper tube',
  source: sources['ipc-2018'],
  at: { table: 'E103.3(5)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note:
    'The valve columns of the same table; not seen in print. Stated in feet of copper tube: taken as feet of a plastic tube of ' +
    'the same nominal size, whose bore is smaller, it errs to the safe side.',
  columns: fittingColumns,
  rows: {
    '3/8': { values: { 'check-valve': 1.5 } },
    '1/2': { values: { 'check-valve': 2 } },
    '5/8': { values: { 'check-valve': 2.5 } },
    '3/4': { values: { 'check-valve': 3 } },
    '1': { values: { 'ball-valve': 0.5, 'check-valve': 4.5 } },
    '1-1/4': { values: { 'ball-valve': 0.5, 'check-valve': 5.5 } },
    '1-1/2': { values: { 'ball-valve': 0.5, 'check-valve': 6.5 } },
    '2': { values: { 'ball-valve': 0.5, 'gate-valve': 0.5, 'butterfly-valve': 7.5, 'check-valve': 9 } },
    '2-1/2': { values: { 'gate-valve': 1, 'butterfly-valve': 10, 'check-valve': 11.5 } },
    '3': { values: { 'gate-valve': 1.5, 'butterfly-valve': 15.5, 'check-valve': 14.5 } },
    '4': { values: { 'gate-valve': 2, 'butterfly-valve': 16, 'check-valve': 18.5 } },
  },
};
