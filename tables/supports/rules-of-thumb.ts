import { sources } from '../sources.ts';
import type { ValueTable } from '../table.ts';

/** Nail plates: where a hole lies near the face of a stud or plate. */
export const nailPlatesPerInlet: ValueTable = {
  kind: 'value',
  id: 'nail-plates-per-inlet',
  title: 'Nail plates at an inlet of an indoor fixture',
  source: sources['trade-practice'],
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note: 'No source: one where the pipe comes through the plate of the wall and one at a stud. The framing decides.',
  unit: 'one',
  printed: 2,
};

export const sleevesPerFloor: ValueTable = {
  kind: 'value',
  id: 'sleeves-per-floor',
  title: 'Sleeves where a run passes a floor, or the service the wall',
  source: sources['trade-practice'],
  at: { checkedOn: '2026-11-25' },
  verified: 'common-practice',
  note: 'No source: concrete and masonry need them, a bored hole in a wooden frame may not.',
  unit: 'one',
  printed: 1,
};
