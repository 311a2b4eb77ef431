import { sources } from '../sources.ts';
import type { ValueTable } from '../table.ts';

const note =
  'From memory, not found in print. H is the sum over the fixtures of the probability that each runs; which of two ' +
  'forms holds just at the limit was not seen either.';

/** Up to this many fixtures running on average, the distribution itself is counted out. */
export const countedOutTo: ValueTable = {
  kind: 'value',
  id: 'statistical-2017/counted-out-to',
  title: 'Largest H for which the distribution is counted out',
  source: sources['peak-demand-2017'],
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  unit: 'one',
  printed: 1.25,
};

/** From this many on, the plain normal form; between the two, the zero-truncated one. */
export const plainNormalFrom: ValueTable = {
  kind: 'value',
  id: 'statistical-2017/plain-normal-from',
  title: 'Smallest H for which the plain normal form is taken',
  source: sources['peak-demand-2017'],
  at: { checkedOn: '2026-11-25' },
  verified: 'memory',
  note,
  unit: 'one',
  printed: 5,
};
