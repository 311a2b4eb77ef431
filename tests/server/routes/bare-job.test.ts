import { describe, expect, it } from 'vitest';
import { smallJob } from '../small-job.ts';
import { testApp } from '../test-app.ts';

/** A service and nothing else: no level, no fixture, no place. */
const bare = JSON.stringify({
  ...smallJob,
  levels: [],
  groups: [],
  fixtures: [],
  schemes: [{ id: 'bare', name: 'Bare', runs: [{ id: 'S', from: 'street', line: "1 PEX 20'" }] }],
  chosen: 'bare',
});

describe('a job that serves no fixture', () => {
  it.each([
    '',
    '/pictures',
    '/compare',
    '/sizing',
    '/takeoff',
    '/takeoff.csv',
    '/file',
    '/explain/S/velocity',
  ])('has an answer in words, and no number that is none, at %s', async (page) => {
    const { app, id } = await testApp(bare);
    const answer = await app.inject(`/jobs/${id}${page}`);
    expect(answer.statusCode).toBe(200);
    expect(answer.body).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('says that there is nothing to size for, and leaves the job as it is', async () => {
    const test = await testApp(bare);
    const page = await test.app.inject(`/jobs/${test.id}/sizing`);
    expect(page.body).toContain('no run ends at a fixture yet');
    const before = await test.document();
    const answer = await test.post(`/jobs/${test.id}/sizing`, { as: 'same', revision: '1' });
    expect(answer.statusCode).toBe(422);
    expect(await test.document()).toBe(before);
  });
});
