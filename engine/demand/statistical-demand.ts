import { countedOutTo, plainNormalFrom } from '../../tables/statistical-2017/rule.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { type BusyKind, busyFlow, busyPercentile, isOnLattice } from './busy-fixtures.ts';
import { busyNormalPercentile, normalPercentile } from './normal-demand.ts';

/** The three forms in which the 2017 method finds a percentile. */
export type StatisticalForm = 'counted out' | 'zero-truncated normal' | 'normal';

/** The lattices: on the first lie flows with one decimal in gpm, to the second all others are rounded up. */
const coarse = toSI(0.1, 'gpm');
const fine = toSI(0.01, 'gpm');

/** How many fixtures run on average: the H by which the method chooses its form. */
export function busyOnAverage(kinds: readonly BusyKind[]): number {
  return kinds.reduce((sum, { count, busy }) => sum + count * busy, 0);
}

/** The form that the method takes, by how many fixtures run on average; limits from memory, see the tables. */
export function statisticalForm(kinds: readonly BusyKind[]): StatisticalForm {
  const busy = busyOnAverage(kinds);
  if (busy <= countedOutTo.printed) return 'counted out';
  return busy < plainNormalFrom.printed ? 'zero-truncated normal' : 'normal';
}

/**
 * Percentile of the flow, m3/s, by one of the forms. The normal ones lie below what counting out gives where flows
 * differ much, so that where the method passes to one its demand steps down; and none is sure to rise when a fixture
 * is added: see {@link busyPercentile} and design-flow.ts.
 *
 * @param level between 0 and 1; the method's own is 0.99
 */
export function statisticalFlow(
  kinds: readonly BusyKind[],
  level: number,
  form = statisticalForm(kinds),
): number {
  switch (form) {
    case 'counted out':
      return busyPercentile(busyFlow(kinds, isOnLattice(kinds, coarse) ? coarse : fine), level);
    case 'zero-truncated normal':
      return busyNormalPercentile(kinds, level);
    case 'normal':
      return normalPercentile(kinds, level);
  }
}
