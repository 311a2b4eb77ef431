import { describe, expect, it } from 'vitest';
import { busyCount } from '../../engine/demand/binomial.ts';
import {
  type BusyKind,
  busyFlow,
  busyPercentile,
  flowPercentile,
} from '../../engine/demand/busy-fixtures.ts';
import { standardNormal } from '../../engine/demand/normal-demand.ts';
import { numberIn, readData, wordIn } from './data/read-data.ts';
import { expectPrinted } from './expect-printed.ts';

/** `30x0.045x20 5x0.02x15`: count, probability, and flow in tenths. */
function kindsIn(text: string): BusyKind[] {
  return text.split(' ').map((kind) => {
    const [count, busy, flow] = kind.split('x').map(Number);
    return { count: count!, busy: busy!, flow: flow! };
  });
}

describe('scipy 1.17.1 (open-source library, Python; run 2026)', () => {
  /** The library itself is good to about 1e-12 of a probability where counts are large. */
  it.each(readData('binomial-points.csv'))('$running of $count, each busy for $busy', (row) => {
    const { first, probability } = busyCount(numberIn(row, 'count'), numberIn(row, 'busy'), 1e-18);
    const printed = numberIn(row, 'probability');
    expectPrinted(probability[numberIn(row, 'running') - first]!, printed, 2e-11 * printed + 1e-18);
  });

  it.each(readData('normal-points.csv'))('the normal deviation at $level', (row) => {
    const level = numberIn(row, 'level');
    const deviations = numberIn(row, 'deviations');
    // Near 1 the last digits of the level (5e-16) weigh the more, the flatter the curve is there.
    const slope = Math.sqrt(2 * Math.PI) * Math.exp(deviations ** 2 / 2);
    expectPrinted(standardNormal(level), deviations, 1e-12 + 5e-16 * slope);
  });

  it.each(readData('busy-flow-points.csv'))('flow of $kinds at $level', (row) => {
    const distribution = busyFlow(kindsIn(wordIn(row, 'kinds')), 1);
    const level = numberIn(row, 'level');
    const plain = numberIn(row, 'plain');
    expect(flowPercentile(distribution, level)).toBe(plain);
    expect(busyPercentile(distribution, level)).toBe(numberIn(row, 'busy'));
    const { first, probability } = distribution;
    const chance = probability.subarray(0, plain - first + 1).reduce((sum, one) => sum + one, 0);
    expectPrinted(chance, numberIn(row, 'chance_of_no_more_than_plain'), 2e-11);
  });
});
