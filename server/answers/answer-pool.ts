import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import { Refusal } from '../http/refusal.ts';
import type { Answered } from './answer-question.ts';

/** What the questions of all clients together may take. */
export interface PoolLimits {
  /** Questions that are worked on at once. */
  readonly threads: number;
  /** Questions that wait; one more is refused. */
  readonly waiting: number;
  /** Milliseconds from the moment that a question came, its wait counted; then it is stopped. */
  readonly time: number;
  /** Megabytes that one thread may take. */
  readonly memory: number;
}

/** One thread is left to the pages, where the machine has more than one. */
export const poolLimits: PoolLimits = {
  threads: Math.max(1, availableParallelism() - 1),
  waiting: 32,
  time: 60_000,
  memory: 1024,
};

export interface AnswerPool {
  /**
   * Answers a question as `answerQuestion` does, on a thread of its own.
   *
   * @param gone stops the work, when nobody waits for the answer any more
   * @throws a {@link Refusal} where too many wait already, and where time or memory runs out
   */
  readonly answer: (name: string, body: Uint8Array, gone?: AbortSignal) => Promise<Answered>;
  readonly close: () => Promise<void>;
}

/** Threads that answer questions of the JSON interface, so that a large one delays no page. */
export function answerPool(limits: PoolLimits = poolLimits): AnswerPool {
  const pool = new Piscina<{ name: string; body: Uint8Array }, Answered>({
    filename: fileURLToPath(new URL('answer-thread.mjs', import.meta.url)),
    minThreads: 0,
    maxThreads: limits.threads,
    idleTimeout: 60_000,
    resourceLimits: { maxOldGenerationSizeMb: limits.memory },
  });
  let held = 0;
  return {
    answer: async (name, body, gone) => {
      if (held >= limits.threads + limits.waiting) {
        throw new Refusal(503, 'Busy', 'too many questions are waiting; ask again in a moment');
      }
      held++;
      const late = AbortSignal.timeout(limits.time);
      try {
        return await pool.run(
          { name, body },
          { signal: gone === undefined ? late : AbortSignal.any([late, gone]) },
        );
      } catch (error) {
        const why = whyNone(error, late.aborted, gone?.aborted === true, limits);
        throw why === undefined ? error : new Refusal(503, 'No answer in time', why);
      } finally {
        held--;
      }
    },
    close: () => pool.destroy(),
  };
}

/** Why a question had no answer for want of room or time; undefined for a fault of ours. */
function whyNone(error: unknown, late: boolean, gone: boolean, limits: PoolLimits): string | undefined {
  if (late) return `the question took more than ${limits.time / 1000} s and was stopped`;
  if (gone) return 'nobody waits for the answer any more';
  if (error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY') {
    return `the question took more than ${limits.memory} MB and was stopped`;
  }
  return undefined;
}
