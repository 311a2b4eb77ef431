import { bothAbove1000, tankTo500, valveTo500 } from '../demand/wsfu-to-gpm.ts';
import { sources } from '../sources.ts';
import type { CurveTable, Verification } from '../table.ts';

const read: Verification = 'seen-secondary';
const same: Verification = 'corroborated';

const note =
  'Read in part on an engineering reference page; between 60 and 1000 WSFU the flush-tank figures equal 77 Ill. Adm. ' +
  'Code 890 Table N or the National Standard Plumbing Code, which were read. No instruction on interpolation was seen.';

export const demandTank: CurveTable = {
  kind: 'curve',
  id: 'ipc-2018-demand-tank',
  title: 'Demand, supply systems predominantly for flush tanks',
  source: sources['ipc-2018'],
  at: { table: 'E103.3(3)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  x: 'wsfu',
  y: 'gpm',
  points: [...tankTo500, [750, 170], ...bothAbove1000],
  rowVerified: {
    0: read,
    1: read,
    3: read,
    7: read,
    14: read,
    21: read,
    25: read,
    26: same,
    27: same,
    28: same,
    29: same,
    30: same,
    31: same,
    32: same,
    33: same,
    34: same,
    35: same,
    36: same,
    37: same,
    38: same,
    39: same,
    40: same,
    42: same,
    43: same,
  },
};

export const demandValve: CurveTable = {
  kind: 'curve',
  id: 'ipc-2018-demand-valve',
  title: 'Demand, supply systems predominantly for flushometer valves',
  source: sources['ipc-2018'],
  at: { table: 'E103.3(3)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  x: 'wsfu',
  y: 'gpm',
  points: [...valveTo500, [750, 177], ...bothAbove1000],
  rowVerified: { 0: read, 2: read, 5: read, 10: read, 15: read, 17: read, 21: read, 39: same },
};
