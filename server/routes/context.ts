import type { PriceIndex } from '../../engine/index.ts';
import type { Answered } from '../answers/answer-question.ts';
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
  /** Answers a question of the JSON interface. */
  readonly answer: (computation: string, body: Uint8Array) => Promise<Answered>;
  readonly now: () => Date;
}
