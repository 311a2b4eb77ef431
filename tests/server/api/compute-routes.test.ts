import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { computations } from '../../../server/answers/computations.ts';
import { exampleFiles, run } from '../cli/run.ts';
import { testApp } from '../test-app.ts';
import { type ApiClient, apiOf } from './api-of.ts';

/** The same question to the command line and to the JSON interface. */
const questions = [
  { name: 'pressure', args: [], asks: {} },
  { name: 'check', args: [], asks: {} },
  { name: 'compare', args: [], asks: {} },
  { name: 'takeoff', args: ['--rate', '85', '--margin', '10'], asks: { rate: '85', margin: '10' } },
] as const;

const small = exampleFiles().find((file) => file.endsWith('well-cabin.json'))!;

async function client(): Promise<ApiClient> {
  return apiOf((await testApp()).app);
}

describe('the JSON interface', () => {
  it.each(questions)('answers $name as the command line does, for every example', async (question) => {
    const { ask } = await client();
    for (const file of exampleFiles()) {
      const { stdout } = await run([question.name, file, '--json', ...question.args]);
      const { status, json } = await ask(question.name, {
        job: JSON.parse(readFileSync(file, 'utf8')),
        ...question.asks,
      });
      expect(status).toBe(200);
      expect(json).toEqual(JSON.parse(stdout));
    }
  });

  it.each([
    ['explain', ['S1'], { of: 'S1' }],
    ['size', ['--not-larger'], { notLarger: true }],
    ['compare', ['--size'], { size: true }],
  ])('answers %s as the command line does', async (name, args, asks) => {
    const { ask } = await client();
    const job = JSON.parse(readFileSync(small, 'utf8')) as { schemes: [{ runs: [{ id: string }] }] };
    const asked = name === 'explain' ? { of: job.schemes[0].runs[0].id } : asks;
    const words = name === 'explain' ? [job.schemes[0].runs[0].id] : args;
    const { stdout } = await run([name, small, ...words, '--json']);
    expect((await ask(name, { job, ...asked })).json).toEqual(JSON.parse(stdout));
  });

  it('describes every key that it answers with', async () => {
    const { ask } = await client();
    for (const file of exampleFiles()) {
      const job = JSON.parse(readFileSync(file, 'utf8')) as { schemes: [{ runs: [{ id: string }] }] };
      for (const { name, answer } of computations) {
        if (name === 'size' && file !== small) continue;
        const { json } = await ask(name, {
          job,
          ...(name === 'explain' ? { of: job.schemes[0].runs[0].id } : {}),
        });
        // A shape drops what it does not know, so that an undescribed key would be missing on the left.
        expect(answer.parse(json), `${name} of ${file}`).toEqual(json);
      }
    }
  });

  it('takes an earlier revision to hold a take-off against, and a price book', async () => {
    const { ask } = await client();
    const job = JSON.parse(readFileSync(small, 'utf8'));
    const prices = JSON.parse(
      readFileSync(new URL('../../../examples/prices/invented-2026.json', import.meta.url), 'utf8'),
    );
    const { json } = await ask('takeoff', { job, before: job, prices: { ...prices, name: 'Another' } });
    expect(json).toMatchObject({
      prices: { name: 'Another' },
      against: { added: [], dropped: [], more: '0.00' },
    });
  });

  it.each([
    ['pressure', {}, /^job/],
    ['pressure', { job: [] }, /^job: the file holds no object/],
    ['pressure', { job: { format: 'hightap-job' } }, /^job: version is missing/],
    ['pressure', { scheme: 'none' }, /^the job has no scheme none/],
    ['pressure', { scheme: 7 }, /^scheme: 7 came/],
    ['pressure', { path: 'nothing.hot' }, /^there is no fixture nothing\.hot/],
    ['pressure', { pth: 'x' }, /unknown field "?pth/],
    ['explain', {}, /^of is missing/],
    ['explain', { of: 'none' }, /^there is no run or fixture none/],
    ['size', { keep: ['none'] }, /^there is no run none/],
    ['size', { materials: ['gold'] }, /materials\[0\]: "?gold/],
    ['compare', { schemes: [] }, /^schemes/],
    ['takeoff', { rate: 'much' }, /much/],
    ['takeoff', { prices: {} }, /^prices: format is missing/],
    ['takeoff', { before: {} }, /^before: format is missing/],
  ])('says what is wrong with a question to %s: %j', async (name, asks, says) => {
    const { ask } = await client();
    const job = JSON.parse(readFileSync(small, 'utf8'));
    const question = name === 'pressure' && Object.keys(asks).length === 0 ? {} : { job, ...asks };
    const { status, json } = await ask(name, question);
    expect(status).toBe(422);
    expect((json as { problems: string[] }).problems[0]).toMatch(says);
  });

  it.each([
    ['text/plain', '{}', 415],
    ['application/x-www-form-urlencoded', 'job=1', 415],
    ['application/json', '{', 422],
    ['application/json', '', 422],
    ['application/json', '{"job": 1, "job": 2}', 422],
    ['application/json', '{"__proto__": {"job": 1}}', 422],
    ['application/json', '\u0000', 422],
    ['application/json', '['.repeat(100_000), 422],
  ])('refuses a body of %s that reads %.20s', async (type, payload, status) => {
    const { app } = await testApp();
    const answer = await app.inject({
      method: 'POST',
      url: '/api/pressure',
      headers: { 'content-type': type },
      payload,
    });
    expect(answer.statusCode).toBe(status);
    expect(answer.json()).toEqual({ problems: [expect.any(String)] });
  });

  it('takes nothing from another site', async () => {
    const { app } = await testApp();
    for (const headers of [{ 'sec-fetch-site': 'cross-site' }, { origin: 'http://elsewhere.test' }]) {
      const answer = await app.inject({
        method: 'POST',
        url: '/api/check',
        headers: { 'content-type': 'application/json', ...headers },
        payload: '{}',
      });
      expect(answer.statusCode).toBe(403);
      expect(answer.json()).toEqual({ problems: [expect.stringContaining('another site')] });
    }
  });
});
