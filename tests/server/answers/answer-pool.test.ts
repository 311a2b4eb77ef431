import { afterEach, describe, expect, it } from 'vitest';
import { type AnswerPool, answerPool, poolLimits } from '../../../server/answers/answer-pool.ts';
import { answerQuestion } from '../../../server/answers/answer-question.ts';
import { buildApp } from '../../../server/app.tsx';
import { writeJob } from '../../../server/document/write-job.ts';
import { createJob } from '../../../server/storage/job-store.ts';
import { buildingJob } from '../../bench/building-job.ts';
import { smallDocument, smallJob } from '../small-job.ts';
import { testStore } from '../storage/test-store.ts';
import { noon } from '../test-app.ts';

const small = Buffer.from(JSON.stringify({ job: smallJob }));
const large = Buffer.from(`{"job":${writeJob(buildingJob(250))}}`);
let pool: AnswerPool;

afterEach(() => pool.close());

/** How many edits of one person are answered while another's large question is worked on. */
async function editsMeanwhile(answer: AnswerPool['answer']): Promise<number> {
  const store = await testStore();
  const id = await createJob(store, smallJob.name, smallDocument, noon);
  const app = await buildApp({ store, answer });
  let answered = false;
  const asked = app
    .inject({
      method: 'POST',
      url: '/api/size',
      headers: { 'content-type': 'application/json' },
      payload: large,
    })
    .then(({ statusCode }) => {
      answered = true;
      return statusCode;
    });
  let edits = 0;
  while (!answered) {
    const edit = await app.inject({
      method: 'POST',
      url: `/jobs/${id}/job`,
      headers: { 'content-type': 'application/x-www-form-urlencoded', 'hx-request': 'true' },
      payload: new URLSearchParams({ name: `Fern End ${edits}`, note: '', chosen: 'S1' }).toString(),
    });
    expect(edit.statusCode).toBe(200);
    edits++;
  }
  expect(await asked).toBe(200);
  await app.close();
  return edits;
}

describe('questions on threads of their own', () => {
  it('are answered as on this one', async () => {
    pool = answerPool({ ...poolLimits, threads: 1 });
    for (const name of ['pressure', 'size']) {
      expect(await pool.answer(name, small)).toEqual(await answerQuestion(name, small));
    }
    expect(await pool.answer('pressure', Buffer.from('{'))).toMatchObject({ ok: false });
  });

  it('delay nobody else: edits are answered while a large sizing runs, and are not where it runs here', async () => {
    pool = answerPool({ ...poolLimits, threads: 1 });
    const apart = await editsMeanwhile(pool.answer);
    const here = await editsMeanwhile(answerQuestion);
    expect(apart).toBeGreaterThan(2 * here);
  });

  it('are refused where too many wait, and stopped where they take too long', async () => {
    pool = answerPool({ ...poolLimits, threads: 1, waiting: 1 });
    const asked = await Promise.allSettled([1, 2, 3].map(() => pool.answer('pressure', small)));
    expect(asked.map(({ status }) => status)).toEqual(['fulfilled', 'fulfilled', 'rejected']);
    expect(asked[2]).toMatchObject({
      reason: { statusCode: 503, message: expect.stringContaining('too many questions') },
    });
    await pool.close();
    pool = answerPool({ ...poolLimits, threads: 1, time: 1 });
    await expect(pool.answer('size', large)).rejects.toMatchObject({
      statusCode: 503,
      message: expect.stringContaining('more than 0.001 s'),
    });
  });

  it('are stopped when nobody waits any more, and the next one is answered', async () => {
    pool = answerPool({ ...poolLimits, threads: 1 });
    const gone = new AbortController();
    const left = pool.answer('size', large, gone.signal);
    setTimeout(() => gone.abort(), 300);
    await expect(left).rejects.toThrow('nobody waits');
    expect(await pool.answer('pressure', small)).toMatchObject({ ok: true });
  });
});
