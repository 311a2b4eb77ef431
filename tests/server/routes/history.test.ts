import { describe, expect, it } from 'vitest';
import { testApp } from '../test-app.ts';

const longer = { line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot" };

describe('the history of a job', () => {
  it('tells what each revision changed, names one, gives its file and goes back to it by a new one', async () => {
    const { app, post, id, document } = await testApp();
    const first = await document();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const page = await app.inject(`/jobs/${id}/history`);
    expect(page.body).toContain('Run SHH: length 15&#39; becomes 45&#39;');
    expect(page.body).toContain('2 (shown)');
    await post(`/jobs/${id}/history/1/name`, { name: 'As <measured>' });
    expect((await app.inject(`/jobs/${id}/history`)).body).toContain('value="As <measured>"');
    expect((await app.inject(`/jobs/${id}/history/1/file`)).body).toBe(first);
    expect((await post(`/jobs/${id}/history/1/back`, { revision: '1' })).statusCode).toBe(409);
    expect((await post(`/jobs/${id}/history/1/back`, { revision: '2' })).statusCode).toBe(303);
    expect(await document()).not.toContain("45'");
    expect((await app.inject(`/jobs/${id}/history`)).body).toContain('3 (shown)');
  });

  it('opens an earlier revision, which no form changes', async () => {
    const { app, post, id, document } = await testApp();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const before = await document();
    expect((await app.inject(`/jobs/${id}~1`)).statusCode).toBe(200);
    const answer = await post(`/jobs/${id}~1/runs/SHH/line`, longer);
    expect(answer.statusCode).toBe(422);
    expect(answer.body).toContain('an earlier revision, which stays as it is');
    expect(await document()).toBe(before);
  });

  it('refuses a number that is none', async () => {
    const { app, id } = await testApp();
    for (const number of ['0', '9', 'x']) {
      expect((await app.inject(`/jobs/${id}/history/${number}/file`)).statusCode).toBe(404);
    }
  });
});
