import { sources } from '../sources.ts';
import type { GridRow, GridTable } from '../table.ts';
import type { FittingKind, JointId } from './names.ts';

type Coefficients = GridTable<string, FittingKind>;

const note =
  'K = f L / d from the equivalent lengths that a manufacturer’s manual prints for PEX SDR-9, with f by Colebrook at ' +
  '8 ft/s and 60 F in the average bore. Insert fittings narrow the way, most of all in small tube: a K of threaded or ' +
  'soldered fittings would say too little of them. Other sizes take the row of the next smaller one, by bore.';

const columns: Coefficients['columns'] = {
  ell: 'one',
  'ell-45': 'one',
  'tee-run': 'one',
  'tee-branch': 'one',
  coupling: 'one',
  'ball-valve': 'one',
  'gate-valve': 'one',
  'globe-valve': 'one',
  'butterfly-valve': 'one',
  'check-valve': 'one',
  'compression-stop': 'one',
  'corporation-stop': 'one',
  'curb-stop': 'one',
};

const row = (ell: number, run: number, branch: number, coupling: number): GridRow<FittingKind> => ({
  values: { ell, 'tee-run': run, 'tee-branch': branch, coupling },
});

const brass: Coefficients = {
  kind: 'grid',
  id: 'insert-brass-coefficients',
  title: 'Loss coefficients K of brass insert fittings',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'computed',
  note,
  columns,
  rows: {
    '3/8': row(8.35, 2.63, 8.53, 2.63),
    '1/2': row(5.83, 1.36, 6.45, 1.24),
    '3/4': row(3.8, 0.77, 3.6, 0.24),
    '1': row(2.97, 0.68, 3.27, 0.39),
  },
};

const polymer: Coefficients = {
  kind: 'grid',
  id: 'insert-polymer-coefficients',
  title: 'Loss coefficients K of polymer insert fittings',
  source: sources['pex-manual-a'],
  at: { page: '21', checkedOn: '2026-11-25' },
  verified: 'computed',
  note,
  columns,
  rows: {
    '1/2': row(10.24, 4.47, 11.1, 4.4),
    '3/4': row(7.04, 2.67, 7.16, 1.94),
    '1': row(5.35, 1.78, 5.05, 1.34),
  },
};

/** Joints whose fittings are narrower than the pipe, by nominal size; the others take `lossCoefficients`. */
export const insertCoefficients: { readonly [joint in JointId]?: Coefficients } = {
  'insert-brass': brass,
  'insert-polymer': polymer,
  expansion: {
    ...brass,
    id: 'expansion-coefficients',
    title: 'Stand-in for the loss coefficients K of cold-expansion fittings',
    verified: 'common-practice',
    note: `A stand-in: brass insert fittings, whose waterway is narrower. ${note}`,
  },
};
