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

/** Compares exact sizing with the independent optimiser over random trees; returns how many were infeasible. */
export async function compareTrees(trees: number, smallest: number, largest: number, tied: boolean): Promise<number> {
  const random = seeded(trees + largest);
  let infeasible = 0;
  for (let tree = 0; tree < trees; tree++) {
    const runs = smallest + Math.floor((largest - smallest + 1) * random() ** 2);
    const task = randomTask(runs, 1000 * largest + tree, tied);
    const pressures = pressuresFor(task, random);
    const available = pressures[tree % pressures.length]!;
    const ours = leastCost({ ...task, between: { most: available, least: available } }).pick(available)?.cost;
    const theirs = await mixedInteger(task, available);
    expect(ours, `${runs} runs, tree ${tree}, ${available} Pa`).toBe(theirs);
    if (theirs === undefined) infeasible++;
  }
  return infeasible;
}
