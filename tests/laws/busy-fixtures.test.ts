import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BusyKind,
  busyFlow,
  busyPercentile,
  flowPercentile,
  isOnLattice,
  tailsLeftOff,
} from '../../engine/demand/busy-fixtures.ts';
import { flowMoments } from '../../engine/demand/normal-demand.ts';
import { arbitraryKinds, arbitraryLevel } from '../arbitrary/busy-kinds.ts';
import { countStates, percentileOf } from '../engine/demand/count-states.ts';

const few = arbitraryKinds(4, 3);
const many = arbitraryKinds(5, 60);

function chancesOf(kinds: readonly BusyKind[]): Map<number, number> {
  const { first, probability } = busyFlow(kinds, 1);
  return new Map([...probability].map((chance, at) => [first + at, chance]));
}

describe('the distribution of the flow of busy fixtures', () => {
  it('is what trying every state of every fixture gives', async () => {
    await fc.assert(
      fc.property(few, arbitraryLevel, (kinds, level) => {
        const states = countStates(kinds);
        const chances = chancesOf(kinds);
        for (const { flow, probability } of states) {
          expect(Math.abs((chances.get(flow) ?? 0) - probability)).toBeLessThanOrEqual(2 * tailsLeftOff);
        }
        const distribution = busyFlow(kinds, 1);
        expect(flowPercentile(distribution, level)).toBe(percentileOf(states, level));
        const running = states.filter(({ flow }) => flow > 0);
        expect(busyPercentile(distribution, level)).toBe(percentileOf(running, level));
      }),
    );
  });

  it('sums to one, with the mean and the variance of its fixtures', async () => {
    await fc.assert(
      fc.property(many, (kinds) => {
        const { mean, variance } = flowMoments(kinds);
        let whole = 0;
        let first = 0;
        let second = 0;
        for (const [flow, chance] of chancesOf(kinds)) {
          whole += chance;
          first += chance * flow;
          second += chance * (flow - mean) ** 2;
        }
        expect(whole).toBeCloseTo(1, 11);
        expect(Math.abs(first - mean)).toBeLessThanOrEqual(1e-9 * (1 + mean));
        expect(Math.abs(second - variance)).toBeLessThanOrEqual(1e-6 * (1 + variance));
      }),
    );
  });

  it('is the same in any order of its kinds, and with a kind in two parts', async () => {
    await fc.assert(
      fc.property(many, fc.nat(60), (kinds, part) => {
        const [first, ...rest] = kinds;
        const split = Math.min(part, first!.count);
        const parts = [
          { ...first!, count: split },
          ...rest.reverse(),
          { ...first!, count: first!.count - split },
        ];
        const chances = chancesOf(kinds);
        for (const [flow, chance] of chancesOf(parts)) {
          expect(Math.abs((chances.get(flow) ?? 0) - chance)).toBeLessThanOrEqual(4 * tailsLeftOff);
        }
      }),
    );
  });
});

describe('a percentile of it', () => {
  it('never falls as the level rises, and is never above that of the busy time', async () => {
    await fc.assert(
      fc.property(many, arbitraryLevel, arbitraryLevel, (kinds, one, other) => {
        const distribution = busyFlow(kinds, 1);
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(flowPercentile(distribution, low)).toBeLessThanOrEqual(flowPercentile(distribution, high));
        expect(busyPercentile(distribution, low)).toBeLessThanOrEqual(busyPercentile(distribution, high));
        expect(flowPercentile(distribution, low)).toBeLessThanOrEqual(busyPercentile(distribution, low));
      }),
    );
  });

  it('never falls when a fixture is added, over all moments', async () => {
    await fc.assert(
      fc.property(many, few, arbitraryLevel, (kinds, [more], level) => {
        const before = flowPercentile(busyFlow(kinds, 1), level);
        expect(flowPercentile(busyFlow([...kinds, more!], 1), level)).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  it('is never too low on a coarse lattice, and too high by less than a step for each fixture', async () => {
    await fc.assert(
      fc.property(few, arbitraryLevel, fc.integer({ min: 2, max: 9 }), (kinds, level, step) => {
        const exact = flowPercentile(busyFlow(kinds, 1), level);
        const rounded = flowPercentile(busyFlow(kinds, step), level);
        const fixtures = kinds.reduce((sum, { count }) => sum + count, 0);
        expect(rounded).toBeGreaterThanOrEqual(exact);
        expect(rounded - exact).toBeLessThanOrEqual(fixtures * (step - 1));
        if (isOnLattice(kinds, step)) expect(rounded).toBe(exact);
      }),
    );
  });
});
