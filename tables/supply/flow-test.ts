import { sources } from '../sources.ts';
import type { ValueTable } from '../table.ts';

/** The pressure of a street falls with this power of the flow that is drawn from it. */
export const flowTestExponent: ValueTable = {
  kind: 'value',
  id: 'flow-test-exponent',
  title: 'Power of the flow with which street pressure falls',
  source: sources['nfpa-291'],
  at: { section: 'flow test', checkedOn: '2026-11-25' },
  verified: 'memory',
  note: '1 / 0.54, rounded as it is usually written.',
  unit: 'one',
  printed: 1.85,
};
