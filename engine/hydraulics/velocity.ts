import { sources } from '../../tables/sources.ts';
import type { Formula } from '../explain/formula.ts';

/** Mean velocity in a full round pipe. */
export const velocity = {
  id: 'velocity',
  title: 'Velocity',
  printed: 'v = Q / (π · d² / 4)',
  source: {
    source: sources.continuity,
    at: { checkedOn: '2026-11-25' },
    verified: 'textbook',
  },
  symbols: {
    Q: { unit: 'm3/s', meaning: 'design flow' },
    d: { unit: 'm', meaning: 'bore' },
  },
  result: { unit: 'm/s', meaning: 'velocity' },
  compute: ({ Q, d }) => Q / ((Math.PI * d * d) / 4),
} as const satisfies Formula<'Q' | 'd'>;
