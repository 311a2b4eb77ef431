import { setTimeout } from 'node:timers/promises';
import { sql } from 'kysely';
import { expect } from 'vitest';
import { openStore } from '../../server/storage/database.ts';
import { isPostgres } from '../../server/storage/dialect.ts';
import { createJob } from '../../server/storage/job-store.ts';
import { smallDocument } from '../server/small-job.ts';
import { noon } from '../server/test-app.ts';
import { type KnownJob, lookAt } from './kept-saves.ts';
import { type ServerProcess, startServer } from './server-process.ts';

export interface KillFigures {
  readonly rounds: number;
  readonly acknowledged: number;
  /** Saves that nobody was told of and that were kept all the same. */
  readonly unacknowledgedKept: number;
  readonly starts_ms: readonly number[];
}

/** Numbers from 0 to 1 that follow from a seed: a linear congruential generator with the constants of ISO C's example. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return (state >>> 8) / 2 ** 24;
  };
}

/** Milliseconds after a round's first save within which the server is killed: some ten saves of four writers. */
const window = 300;

/**
 * Lets a server take saves of two jobs from four writers and kills it at a moment that follows from the seed; again
 * and again. After each restart every save that was acknowledged must be there, and no half one.
 *
 * @param alsoKill kills more at the same moment, such as a process of the database
 */
export async function killRounds(
  place: string,
  environment: Readonly<Record<string, string>>,
  rounds: number,
  seed: number,
  alsoKill?: (round: number) => Promise<void>,
): Promise<KillFigures> {
  const random = seeded(seed);
  const store = await openStore(place);
  const jobs: KnownJob[] = [];
  for (const name of ['One', 'Two']) {
    jobs.push({ id: await createJob(store, name, smallDocument, noon), notes: new Set(), looked: 0 });
  }
  const starts_ms: number[] = [];
  let acknowledged = 0;
  for (let round = 0; round < rounds; round++) {
    const server = await startServer(environment);
    starts_ms.push(server.startedIn_ms);
    const saved = await saveUntilKilled(server, jobs, round, random, alsoKill);
    for (const job of jobs) {
      await patiently(() => lookAt(store, job));
      const lost = saved.filter((save) => save.job === job.id && !job.notes.has(save.note));
      expect(lost, `acknowledged in round ${round} and lost`).toEqual([]);
    }
    acknowledged += saved.length;
    if (!isPostgres(store)) {
      const checked = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(store);
      expect(checked.rows).toMatchObject([{ integrity_check: 'ok' }]);
    }
  }
  await store.destroy();
  const kept = jobs.reduce((sum, { notes }) => sum + notes.size, 0);
  return { rounds, acknowledged, unacknowledgedKept: kept - acknowledged, starts_ms };
}

interface Save {
  readonly job: string;
  readonly note: string;
}

async function saveUntilKilled(
  server: ServerProcess,
  jobs: readonly KnownJob[],
  round: number,
  random: () => number,
  alsoKill?: (round: number) => Promise<void>,
): Promise<readonly Save[]> {
  const saved: Save[] = [];
  const moment = random() * window;
  let killed = false;
  let tellFirst: () => void = () => undefined;
  const first = new Promise<void>((resolve) => {
    tellFirst = resolve;
  });
  const write = async (job: string, writer: number) => {
    for (let count = 0; !killed; count++) {
      const note = `round ${round} writer ${writer} save ${count}`;
      const answer = await post(`${server.address}/jobs/${job}/job`, note);
      if (answer === undefined) continue;
      // Two writers of one job may meet (409), and a database that is killed as well does not answer (503).
      expect([303, 409, 503]).toContain(answer);
      if (answer === 303) saved.push({ job, note });
      if (answer === 303) tellFirst();
    }
  };
  const writing = jobs.flatMap(({ id }, at) => [write(id, 2 * at), write(id, 2 * at + 1)]);
  await first;
  await setTimeout(moment);
  await alsoKill?.(round);
  await server.end('SIGKILL');
  killed = true;
  await Promise.all(writing);
  return saved;
}

/** @returns the answer's status, or undefined where the server was killed before it answered */
async function post(address: string, note: string): Promise<number | undefined> {
  const body = new URLSearchParams({ name: 'Small', chosen: 'S1', note });
  try {
    return (await fetch(address, { method: 'POST', body, redirect: 'manual' })).status;
  } catch {
    return undefined;
  }
}

/** Tries for a while: a database that was killed as well takes its time to come back. */
async function patiently(work: () => Promise<void>): Promise<void> {
  for (let tries = 0; ; tries++) {
    try {
      await work();
      return;
    } catch (error) {
      const fails = error instanceof Error && error.name === 'AssertionError';
      if (fails || tries >= 50) throw error;
      await setTimeout(200);
    }
  }
}
