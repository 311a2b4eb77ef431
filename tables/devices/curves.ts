import { sources } from '../sources.ts';
import type { CurveTable, GridTable } from '../table.ts';

const replace = 'A generic curve: the maker’s curve takes its place.';
const at = { checkedOn: '2026-11-25' } as const;

const backflowDualCheckVented: CurveTable = {
  kind: 'curve',
  id: 'backflow-dual-check-vented',
  title: 'Loss of a dual check valve with atmospheric vent',
  source: sources['backflow-training-page'],
  at,
  verified: 'seen-secondary',
  note: `Read as 2 to 4 psi at no flow and 8 to 15 psi at 10 gpm, 25 psi allowed; the upper ends stand here. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 4],
    [10, 15],
  ],
};

const softener: CurveTable = {
  kind: 'curve',
  id: 'softener',
  title: 'Loss of a softener with a rated service flow of 15 gpm',
  source: sources['nsf-44'],
  at,
  verified: 'memory',
  note:
    'The standard allows 15 psi at the rated service flow, as a certifier’s article says; that the rated flow is 15 gpm, and ' +
    `the shape below it (flow to the 1.5), are assumed. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 0],
    [5, 2.9],
    [10, 8.2],
    [15, 15],
  ],
};

const filter: CurveTable = {
  kind: 'curve',
  id: 'filter',
  title: 'Loss of a whole-house cartridge filter, clean',
  source: sources['trade-practice'],
  at,
  verified: 'memory',
  note: `2 to 8 psi is recalled for a clean cartridge, 10 to 15 psi for a dirty one. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 0],
    [5, 1],
    [10, 3],
    [20, 8],
  ],
};

const heaterStorage: CurveTable = {
  kind: 'curve',
  id: 'heater-storage',
  title: 'Loss of a storage water heater',
  source: sources['trade-practice'],
  at,
  verified: 'memory',
  note: `1 to 2 psi is recalled. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 0],
    [10, 1],
    [20, 2],
  ],
};

const heaterTankless: CurveTable = {
  kind: 'curve',
  id: 'heater-tankless',
  title: 'Loss of a tankless gas water heater',
  source: sources['trade-practice'],
  at,
  verified: 'memory',
  note:
    'Recalled as 5 to 8 psi at 4 gpm, 12 to 15 at 6 gpm, 20 to 25 at 8 gpm; the middles stand here, and the square law ' +
    `below 4 gpm. Another recollection: 5 to 15 psi at 3 to 8 gpm. No published curve was found. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 0],
    [2, 1.6],
    [4, 6.5],
    [6, 13.5],
    [8, 22.5],
  ],
};

const mixingValve: CurveTable = {
  kind: 'curve',
  id: 'mixing-valve',
  title: 'Loss of a 3/4 in mixing valve at the source of hot water',
  source: sources['trade-practice'],
  at,
  verified: 'memory',
  note: `Cv of 3 to 5 in one recollection, 1.5 to 4 in another; (flow / Cv) squared with Cv = 3. ${replace}`,
  x: 'gpm',
  y: 'psi',
  points: [
    [0, 0],
    [3, 1],
    [6, 4],
    [9, 9],
    [12, 16],
  ],
};

/** Generic losses for devices whose maker's curve is not at hand. */
export const deviceCurves = {
  'backflow-dual-check-vented': backflowDualCheckVented,
  softener,
  filter,
  'heater-storage': heaterStorage,
  'heater-tankless': heaterTankless,
  'mixing-valve': mixingValve,
} as const;

/** Through flow of a manifold by its nominal size; the smallest of the printed tees of a size. */
export const manifoldCv: GridTable<string, 'cv'> = {
  kind: 'grid',
  id: 'manifold-cv',
  title: 'Flow coefficient of multiport tees, straight through',
  source: sources['pex-manual-b'],
  at: { section: 'Appendix C', page: '105', checkedOn: '2026-11-25' },
  verified: 'seen',
  note:
    'The least Cv of each size in print (3/4 in tees: 7.1 to 15.3; 1 in tees: 25.1 to 29.3). The maker of the manifold ' +
    'gives its own.',
  columns: { cv: 'Cv' },
  rows: {
    '3/4': { values: { cv: 7.1 } },
    '1': { values: { cv: 25.1 } },
    '1-1/4': {
      values: { cv: 45.9 },
      note: 'Its lengths are transposed in print: 7.9 belongs to the outlet’s Cv and 1.8 ft to the run.',
    },
    '1-1/2': {
      values: { cv: 45.9 },
      verified: 'computed',
      note: 'Not printed: the 1-1/4 in figure, which is lower.',
    },
    '2': { values: { cv: 99 } },
  },
};

/**
 * Flow through one port of a manifold by the nominal size of its line. The page prints the outlets of its tees without
 * their size; the least of those that feed 1/2 in lines stands here.
 */
export const manifoldPortCv: GridTable<string, 'cv'> = {
  kind: 'grid',
  id: 'manifold-port-cv',
  title: 'Flow coefficient of a manifold port',
  source: sources['pex-manual-b'],
  at: { section: 'Appendix C', page: '105', checkedOn: '2026-11-25' },
  verified: 'computed',
  note: 'Scaled from the 1/2 in outlet, Cv 3.0, by the bores squared. The maker of the manifold gives its own.',
  columns: { cv: 'Cv' },
  rows: {
    '3/8': { values: { cv: 1.6 } },
    '1/2': {
      values: { cv: 3.0 },
      verified: 'seen',
      note: 'The least of 3.0 to 4.0 for the outlets of multiport tees.',
    },
    '5/8': { values: { cv: 4.4 } },
    '3/4': { values: { cv: 6.0 } },
    '1': { values: { cv: 9.9 } },
    '1-1/4': { values: { cv: 14.8 } },
  },
};
