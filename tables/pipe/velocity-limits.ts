import { sources } from '../sources.ts';
import type { GridTable } from '../table.ts';
import type { MaterialId } from './names.ts';

/**
 * The International codes leave velocity to accepted practice, so that both of our profiles take the figures of the
 * National Standard Plumbing Code, the one code text with a number that was read.
 */
export const velocityLimits: GridTable<MaterialId, 'cold' | 'hot'> = {
  kind: 'grid',
  id: 'velocity-limits',
  title: 'Most velocity at design flow',
  source: sources.nspc,
  at: { section: '10.14.1', checkedOn: '2026-11-25' },
  verified: 'seen',
  note:
    '8 ft/s in all distribution piping unless the maker of the pipe asks for less; hot water in copper 5 ft/s. Copper ' +
    'that carries water above 140 F for long is kept to 2 to 3 ft/s in the trade’s handbook. PEX makers accept about ' +
    '10 to 12 ft/s (from memory).',
  columns: { cold: 'ft/s', hot: 'ft/s' },
  rows: {
    pex: {
      values: { cold: 8, hot: 8 },
      note: 'Some codes hold copper-alloy insert fittings in hot PEX to the 5 ft/s of copper (from memory).',
    },
    'copper-k': { values: { cold: 8, hot: 5 } },
    'copper-l': { values: { cold: 8, hot: 5 } },
    'copper-m': { values: { cold: 8, hot: 5 } },
    cpvc: { values: { cold: 8, hot: 8 }, note: 'A manufacturer’s guide of 2013 allows up to 10 ft/s.' },
    pe: { values: { cold: 8, hot: 8 }, note: 'Cold water only: the hot figure never applies.' },
    galvanized: { values: { cold: 8, hot: 8 } },
    pvc: {
      values: { cold: 8, hot: 8 },
      note: 'An engineering manual asks for 5 ft/s in closed-end PVC and CPVC systems. Cold water only.',
    },
    'pe-x': { values: { cold: 8, hot: 8 } },
    'pe-x-s5': { values: { cold: 8, hot: 8 } },
    'copper-en': { values: { cold: 8, hot: 5 } },
    'copper-thin': { values: { cold: 8, hot: 5 } },
    multilayer: { values: { cold: 8, hot: 8 } },
  },
};
