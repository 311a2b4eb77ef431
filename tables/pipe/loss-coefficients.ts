import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';
import type { FittingKind } from './names.ts';

/** One K for each kind, whatever its size and joint: what the tables of equivalent lengths lack. */
export const lossCoefficients: GridTable<FittingKind, 'k'> = {
  kind: 'grid',
  id: 'loss-coefficients',
  title: 'Loss coefficients K of threaded fittings and valves',
  source: sources['pipe-data-page'],
  at: { checkedOn: '2026-11-25' },
  verified: 'seen-secondary',
  note: 'Of threaded steel fittings, on the velocity head in the pipe; handbooks differ by 20 to 50 %.',
  columns: { k: 'one' },
  rows: {
    ell: { values: { k: 1.5 }, note: 'IRC 2018 Table A.2.2 prints 0.90 for the same ell.' },
    'ell-45': { values: { k: 0.4 }, note: 'IRC 2018 Table A.2.2 prints 0.42.' },
    'tee-run': { values: { k: 0.9 } },
    'tee-branch': { values: { k: 2 }, note: 'IRC 2018 Table A.2.2 prints 1.80.' },
    coupling: {
      values: { k: 0.12 },
      note: 'Read off an engineering data book’s chart at 1/2 in; 0.08 at 1 in.',
    },
    'ball-valve': {
      values: { k: 0.1 },
      note: 'Read off an engineering data book’s chart at 1 in, full bore.',
    },
    'gate-valve': { values: { k: 0.15 } },
    'globe-valve': { values: { k: 10 } },
    'butterfly-valve': {
      values: { k: 0.85 },
      verified: 'computed',
      note: '45 times the fully turbulent friction factor at 2 in (0.0188).',
    },
    'check-valve': { values: { k: 2 }, note: 'Swing check.' },
    'compression-stop': {
      values: { k: 7.7 },
      verified: 'computed',
      note: 'From the 30 ft that 77 Ill. Adm. Code 890 Table Q prints at 1 in: f L / D with f = 0.022, bore 1.025 in.',
    },
    'corporation-stop': {
      values: { k: 3.2 },
      verified: 'computed',
      note: 'From the 9 ft of a one-page meter sheet at 3/4 in: f L / D with f = 0.0235, bore 0.785 in.',
    },
    'curb-stop': {
      values: { k: 2.2 },
      verified: 'computed',
      note: 'From the 6 ft of a one-page meter sheet at 3/4 in: f L / D with f = 0.0235, bore 0.785 in.',
    },
  },
};
