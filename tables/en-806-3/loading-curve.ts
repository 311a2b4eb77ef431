import { sources } from '../sources.ts';
import type { CurveTable } from '../table.ts';

/**
 * The standard's own curve (figure B.1) could not be read. Its tables of pipes could: so many loading units on a pipe
 * of such a bore, at 2.0 m/s. What the least of the pipes carries that may take so many units is the most that the
 * standard can mean by them.
 */
export const loadingCurve: CurveTable = {
  kind: 'curve',
  id: 'en-806-3/loading-curve',
  title: 'Flow at 2.0 m/s in the least pipe that may carry so many loading units',
  source: sources['en-806-3'],
  at: { table: '3', checkedOn: '2026-11-25' },
  verified: 'computed',
  note:
    'Computed from the bores and loading units of Tables 3 for PB, PP, PVC-C and multilayer pipe, read in a textbook. ' +
    'An upper bound of the standard’s design flow, stepped like the tables themselves.',
  x: 'lu',
  y: 'L/s',
  points: [
    [6, 0.3079],
    [10, 0.3534],
    [13, 0.4122],
    [20, 0.5912],
    [25, 0.6537],
    [30, 0.706],
    [45, 0.9661],
    [55, 1.0619],
    [70, 1.1114],
    [160, 1.5095],
    [180, 1.6694],
    [200, 1.7314],
    [420, 2.3647],
    [500, 2.6148],
    [540, 2.7709],
    [900, 3.8023],
    [970, 3.927],
    [1100, 4.15],
    [1300, 4.5804],
  ],
};
