import { expect } from 'vitest';
import { leastCost, type SizingTask } from '../../../engine/sizing/least-cost.ts';
import { seeded } from '../../bench/tree-job.ts';
import { mixedInteger } from './mixed-integer.ts';
import { randomTask } from './random-task.ts';

/** Street pressures for a task: one that nothing can meet, one that is barely enough, and one with room. */
export function pressuresFor(task: SizingTask, random: () => number): number[] {
  const { need } = leastCost({ ...task, tolerance: 50 });
  const least = need.at(-1);
  // A valve set too low for what lies behind it cannot be met at any pressure.
  if (least === undefined) return [1e6];
  return [least * 0.97, least * (1.005 + 0.05 * random()), least * (1.1 + random())];
}

/** Which random trees to compare: how many from which seed on, between how many runs, and whether sizes are tied. */
export interface Trees {
  readonly trees: number;
  readonly from: number;
  readonly smallest: number;
  readonly largest: number;
  readonly tied: boolean;
}

/** How many of the compared answers had a cost, and how many had none. */
export interface Answers {
  feasible: number;
  infeasible: number;
}

/**
 * Holds exact sizing equal to the independent optimiser over random trees, small ones oftener than large: each at
 * the pressures of {@link pressuresFor}.
 */
export async function compareTrees({ trees, from, smallest, largest, tied }: Trees): Promise<Answers> {
  const random = seeded(from + largest);
  const answers = { feasible: 0, infeasible: 0 };
  for (let tree = 0; tree < trees; tree++) {
    const runs = smallest + Math.floor((largest - smallest + 1) * random() ** 2);
    const task = randomTask(runs, from + tree, tied);
    for (const available of pressuresFor(task, random)) {
      const ours = leastCost({ ...task, between: { most: available, least: available } }).pick(
        available,
      )?.cost;
      const theirs = await mixedInteger(task, available);
      expect(ours, `${runs} runs, tree ${from + tree}, ${available} Pa`).toBe(theirs);
      answers[theirs === undefined ? 'infeasible' : 'feasible']++;
    }
  }
  return answers;
}
