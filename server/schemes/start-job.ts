import { type Job, type PriceIndex, type QuickStart, quickStart } from '../../engine/index.ts';
import { replaceSchemeRuns } from '../edits/scheme-edits.ts';
import { nextTurn } from './next-turn.ts';
import { sizeAtLeastCost } from './size-at-least-cost.ts';

/**
 * A job from a few answers, each of its schemes sized at least cost where that fits; where nothing does, a scheme
 * keeps the sizes that it was drawn up with, and is short on every page that shows it.
 */
export async function startJob(answers: QuickStart, prices: PriceIndex): Promise<Job> {
  let job = quickStart(answers);
  for (const { id } of job.schemes) {
    await nextTurn();
    const sized = sizeAtLeastCost(job, id, prices);
    const edited = sized.ok ? replaceSchemeRuns(job, id, sized.scheme.runs) : undefined;
    if (edited?.ok) job = edited.job;
  }
  return job;
}
