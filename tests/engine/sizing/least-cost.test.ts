import { describe, expect, it } from 'vitest';
import { leastCost } from '../../../engine/sizing/least-cost.ts';
import { seeded } from '../../bench/tree-job.ts';
import { compareTrees, pressuresFor } from './against-optimiser.ts';
import { enumerate } from './enumerate.ts';
import { randomTask } from './random-task.ts';

describe('least-cost sizing', () => {
  it.each([false, true])('equals plain enumeration on small trees, tied: %s', (tied) => {
    const random = seeded(5);
    let infeasible = 0;
    for (let tree = 0; tree < 24; tree++) {
      const task = randomTask(3 + (tree % 4), tree, tied);
      for (const available of pressuresFor(task, random)) {
        const ours = leastCost(task).pick(available)?.cost;
        const all = enumerate(task, available);
        expect(ours, `tree ${tree}`).toBe(all);
        if (all === undefined) infeasible++;
      }
    }
    expect(infeasible).toBeGreaterThan(5);
  });

  it('equals a mixed-integer programme to the cent, and is infeasible when that is', async () => {
    const free = await compareTrees({ trees: 12, from: 500, smallest: 5, largest: 60, tied: false });
    const tied = await compareTrees({ trees: 8, from: 600, smallest: 5, largest: 40, tied: true });
    // Each tree fails beneath its least need, and at any pressure where its valve is set too low.
    expect([free.infeasible, tied.infeasible]).toEqual([12, 8]);
    expect(Math.min(free.feasible, tied.feasible)).toBeGreaterThan(8);
  });

  it('gives the same answer from the whole curve as from a window', () => {
    const task = randomTask(60, 3);
    const whole = leastCost(task);
    for (const available of pressuresFor(task, seeded(2))) {
      const windowed = leastCost({ ...task, between: { most: available, least: available } });
      expect(windowed.pick(available)?.cost).toBe(whole.pick(available)?.cost);
    }
  });

  it('never costs more with more pressure, and each point of the curve can be had at the pressure it asks', () => {
    const curve = leastCost(randomTask(40, 9));
    expect(curve.cost.length).toBeGreaterThan(10);
    curve.need.forEach((need, point) => {
      if (point > 0) {
        expect(need).toBeLessThan(curve.need[point - 1]!);
        expect(curve.cost[point]!).toBeGreaterThan(curve.cost[point - 1]!);
      }
      expect(curve.pick(need)?.cost).toBe(curve.cost[point]);
    });
  });

  it('asks at most tolerance for each run of a path more than the exact answer, and never costs more there', () => {
    const task = randomTask(80, 11);
    const exact = leastCost(task);
    const tolerance = 200;
    const rough = leastCost({ ...task, tolerance });
    expect(rough.points).toBeLessThan(exact.points);
    for (const need of exact.need) {
      const room = need + tolerance * task.network.size;
      expect(rough.pick(room)!.cost).toBeLessThanOrEqual(exact.pick(need)!.cost);
    }
  });
});
