import { sources } from '../../sources.ts';
import { type FittingLengths, fittingColumns } from './fitting-columns.ts';

export const serviceStopLengths: FittingLengths = {
  kind: 'grid',
  id: 'service-stop-lengths',
  title: 'Equivalent length of corporation and curb stops',
  source: sources['meter-loss-sheet'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note:
    'Six figures stand on each line of the sheet without their sizes; taken as 1/2 to 2 in, the first six sizes of its other ' +
    'lines. Used for every material.',
  columns: fittingColumns,
  rows: {
    '1/2': { values: { 'corporation-stop': 9, 'curb-stop': 6 } },
    '3/4': { values: { 'corporation-stop': 9, 'curb-stop': 6 } },
    '1': { values: { 'corporation-stop': 9, 'curb-stop': 7 } },
    '1-1/4': { values: { 'corporation-stop': 9, 'curb-stop': 7 } },
    '1-1/2': { values: { 'corporation-stop': 9, 'curb-stop': 8 } },
    '2': { values: { 'corporation-stop': 9, 'curb-stop': 8 } },
  },
};
