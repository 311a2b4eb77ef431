import type { PriceIndex } from '../../engine/index.ts';
import type { AnswerPool } from '../answers/answer-pool.ts';
import type { PriceBooks } from '../prices/price-books.ts';
import type { Store } from '../storage/database.ts';
import type { OpenJobs } from '../workbench/open-jobs.ts';

/** A job that a new one may start from. */
export interface StartingJob {
  readonly key: string;
  readonly name: string;
  readonly document: string;
}

/** What the routes share. */
export interface AppContext {
  readonly store: Store;
  readonly jobs: OpenJobs;
  readonly starts: readonly StartingJob[];
  readonly books: PriceBooks;
  /** What pipe, fittings and devices cost in a job, by the price book that it uses. */
  readonly prices: (job: string) => Promise<PriceIndex>;
  /** Answers a question of the JSON interface; a signal stops the work when nobody waits for it. */
  readonly answer: AnswerPool['answer'];
  readonly now: () => Date;
}
