import { sources } from '../../sources.ts';
import type { FittingLengths } from './fitting-columns.ts';
import { pexInsertBrassLengths } from './pex-insert-brass.ts';
import { pexPressBronzeLengths } from './pex-press-bronze.ts';

const standIn = {
  ...pexInsertBrassLengths,
  source: sources.hightap,
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  rows: { ...pexInsertBrassLengths.rows, ...pexPressBronzeLengths.rows },
} as const;

/** No table of plain cold-expansion fittings was found. */
export const pexExpansionStandIn: FittingLengths = {
  ...standIn,
  id: 'pex-expansion-stand-in',
  title: 'Stand-in for the equivalent length of cold-expansion fittings (F1960)',
  note:
    'A stand-in, not a published table: the lengths of brass insert fittings (manufacturer’s manual A, 2016), whose ' +
    'waterway is narrower, so that they should err to the safe side. Only multiport tees of this kind were found in print.',
};

/** No table of insert fittings in PE service tube was found; tube and inserts have the dimensions of PEX. */
export const peInsertStandIn: FittingLengths = {
  ...standIn,
  id: 'pe-insert-stand-in',
  title: 'Stand-in for the equivalent length of insert fittings in PE service tube',
  note:
    'A stand-in, not a published table: the lengths of brass insert fittings in PEX (manufacturer’s manual A, 2016), a tube ' +
    'of the same outside diameter and nearly the same bore.',
};
