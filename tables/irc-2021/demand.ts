import { tankTo500, valveTo500 } from '../demand/wsfu-to-gpm.ts';
import { sources } from '../sources.ts';
import type { CurveTable, Verification } from '../table.ts';

const same: Verification = 'corroborated';

const note =
  'Recalled as the same curve that the IPC prints in Table E103.3(3), ending at 500 WSFU; the IRC table itself was not ' +
  'seen. No instruction on interpolation was seen.';

export const demandTank: CurveTable = {
  kind: 'curve',
  id: 'irc-2021-demand-tank',
  title: 'Demand, supply systems predominantly for flush tanks',
  source: sources['irc-2021'],
  at: { table: 'P2903.6(1)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  x: 'wsfu',
  y: 'gpm',
  points: tankTo500,
  rowVerified: {
    0: same,
    1: same,
    3: same,
    7: same,
    14: same,
    21: same,
    25: same,
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
  },
};

export const demandValve: CurveTable = {
  kind: 'curve',
  id: 'irc-2021-demand-valve',
  title: 'Demand, supply systems predominantly for flushometer valves',
  source: sources['irc-2021'],
  at: { table: 'P2903.6(1)', checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  x: 'wsfu',
  y: 'gpm',
  points: valveTo500,
  rowVerified: { 0: same, 2: same, 5: same, 10: same, 15: same, 17: same, 21: same },
};
