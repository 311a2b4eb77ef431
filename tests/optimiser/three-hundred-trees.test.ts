import { describe, expect, it } from 'vitest';
import { compareTrees } from '../engine/sizing/against-optimiser.ts';

const trees = 20;
const batches = (count: number) => Array.from({ length: count }, (_, at) => 1 + at * trees);

/**
 * 300 random trees, each below its least need, barely above it, and with room: least cost to the cent, and nothing
 * exactly where a mixed-integer programme solved to zero gap proves that there is none.
 */
describe('three hundred random trees of 5 to 200 runs, six sizes', () => {
  it.each(batches(10))('free sizes, trees from %i on', async (from) => {
    const { feasible, infeasible } = await compareTrees({
      trees,
      from: 10_000 + from,
      smallest: 5,
      largest: 200,
      tied: false,
    });
    expect(infeasible).toBe(trees);
    expect(feasible).toBeGreaterThan(trees);
  });

  it.each(batches(5))('tied sizes, trees from %i on', async (from) => {
    const { feasible, infeasible } = await compareTrees({
      trees,
      from: 20_000 + from,
      smallest: 5,
      largest: 200,
      tied: true,
    });
    expect(infeasible).toBe(trees);
    expect(feasible).toBeGreaterThan(trees);
  });
});
