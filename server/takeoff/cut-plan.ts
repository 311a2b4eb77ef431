import type { CutPlan } from '../../engine/takeoff/cut-pipe.ts';
import { type PipePlan, pipePlans } from '../../views/take-off.ts';

/** The choice of an address; pieces whole where it names none. */
export function pipePlanOf(asked: string): PipePlan {
  return Object.hasOwn(pipePlans, asked) ? (asked as PipePlan) : 'whole';
}

/** What a choice asks of the engine. */
export function cutPlanOf(choice: PipePlan): CutPlan {
  if (choice === 'whole' || choice === 'coupled') return { plan: choice };
  return { plan: 'allowance', percent: { 'allow-5': 5, 'allow-10': 10, 'allow-15': 15 }[choice] };
}
