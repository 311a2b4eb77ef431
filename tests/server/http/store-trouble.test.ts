import { createHash } from 'node:crypto';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { buildApp } from '../../../server/app.tsx';
import { openStore } from '../../../server/storage/database.ts';
import { createJob, readJobRow } from '../../../server/storage/job-store.ts';
import { listRevisions } from '../../../server/storage/revision-store.ts';
import { smallDocument } from '../small-job.ts';
import { noon } from '../test-app.ts';

const form = { 'content-type': 'application/x-www-form-urlencoded' };

/** The app over a store in memory with one job, and a post of that job's note. */
async function appWithJob() {
  const store = await openStore(':memory:');
  const id = await createJob(store, 'Small', smallDocument, noon);
  const app = await buildApp({ store, now: () => noon });
  const post = (note: string, headers: Record<string, string> = {}) =>
    app.inject({
      method: 'POST',
      url: `/jobs/${id}/job`,
      headers: { ...form, ...headers },
      payload: new URLSearchParams({ name: 'Small', chosen: 'S1', note }).toString(),
    });
  return { store, id, app, post };
}

/** Text of its own for each number, which packing makes little smaller. */
function incompressible(number: number): string {
  return Array.from({ length: 40 }, (_, at) =>
    createHash('sha1').update(`${number} ${at}`).digest('base64'),
  ).join(' ');
}

/** Lets a store grow no more, which SQLite answers as it does a full disk. */
async function fill(store: Awaited<ReturnType<typeof openStore>>): Promise<void> {
  const pages = await sql<{ page_count: number }>`pragma page_count`.execute(store);
  await sql`pragma max_page_count = ${sql.lit(pages.rows[0]?.page_count ?? 0)}`.execute(store);
}

describe('a full disk', () => {
  it('is told in words; what was kept stays and can be read, and goes on when there is room', async () => {
    const { store, id, app, post } = await appWithJob();
    expect((await post('first')).statusCode).toBe(303);
    await fill(store);
    const answers = [];
    for (let tries = 0; tries < 20; tries++) answers.push(await post(incompressible(tries)));
    const refused = answers.filter(({ statusCode }) => statusCode === 507);
    expect(refused.length).toBeGreaterThan(0);
    expect(refused[0]?.body).toContain(
      'The disk on which jobs are kept is full, so this change was not kept.',
    );
    expect(refused[0]?.headers['retry-after']).toBe('60');
    expect(answers.every(({ statusCode }) => statusCode === 303 || statusCode === 507)).toBe(true);
    const kept = answers.length - refused.length;
    expect(await readJobRow(store, id)).toMatchObject({ revision: 2 + kept });
    expect(await listRevisions(store, id)).toHaveLength(2 + kept);
    expect((await app.inject(`/jobs/${id}`)).statusCode).toBe(200);
    await sql`pragma max_page_count = 100000`.execute(store);
    expect((await post('there is room')).statusCode).toBe(303);
    expect((await readJobRow(store, id))?.document).toContain('there is room');
  });
});

describe('a store that may only be read', () => {
  it('refuses a change in words, as a notice where the page is changed in place', async () => {
    const { store, id, post } = await appWithJob();
    await sql`pragma query_only = 1`.execute(store);
    const whole = await post('new');
    expect(whole.statusCode).toBe(507);
    expect(whole.body).toContain('may only be read, so this change was not kept');
    const inPlace = await post('new', { 'hx-request': 'true' });
    expect(inPlace.statusCode).toBe(507);
    expect(inPlace.body).toContain('hx-swap-oob="true" id="notice"');
    expect(await readJobRow(store, id)).toMatchObject({ revision: 1 });
  });
});
