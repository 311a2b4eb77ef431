import { describe, expect, it } from 'vitest';
import { listJobs } from '../../../server/storage/job-store.ts';
import { smallDocument, smallJob } from '../small-job.ts';
import { testApp } from '../test-app.ts';

const boundary = 'edge-of-part';

function upload(content: string | Buffer, { name = 'file', filename = 'a.hightap.json' } = {}) {
  const head = `--${boundary}\r\ncontent-disposition: form-data; name="${name}"; filename="${filename}"\r\ncontent-type: application/json\r\n\r\n`;
  return {
    method: 'POST' as const,
    url: '/jobs/upload',
    headers: { 'content-type': `multipart/form-data; boundary=${boundary}` },
    payload: Buffer.concat([Buffer.from(head), Buffer.from(content), Buffer.from(`\r\n--${boundary}--\r\n`)]),
  };
}

describe('the pages', () => {
  it('opens the job that was opened last', async () => {
    const { app, id } = await testApp();
    const answer = await app.inject('/');
    expect(answer.statusCode).toBe(303);
    expect(answer.headers.location).toBe(`/jobs/${id}`);
  });

  it('shows the answer of each job in the list', async () => {
    const { app } = await testApp();
    const { body } = await app.inject('/jobs');
    expect(body).toContain('Cottage at Fern End');
    expect(body).toMatch(/✓ PASS|▼ SHORT/);
    expect(body).toMatch(/Rain shower, hot: \d+\.\d psi left/);
  });

  it('shows another path where one is chosen, and the worst otherwise', async () => {
    const { app, id } = await testApp();
    expect((await app.inject(`/jobs/${id}?path=KS.cold`)).body).toContain('Kitchen sink, cold:');
    expect((await app.inject(`/jobs/${id}?path=nothing`)).body).toContain('Rain shower, hot:');
  });

  it('explains each figure of the page, as a page and in place', async () => {
    const { app, id } = await testApp();
    const { body } = await app.inject(`/jobs/${id}`);
    const links = [
      ...new Set([...body.matchAll(/href="(\/jobs\/[^"]+\/explain\/[^"]+)"/g)].map((match) => match[1]!)),
    ];
    expect(links.length).toBeGreaterThan(60);
    const seen = new Set<string>();
    while (links.length > 0) {
      const url = links.pop()!;
      if (seen.has(url)) continue;
      seen.add(url);
      const page = await app.inject(url);
      expect(page.statusCode, url).toBe(200);
      expect(page.body).toContain('With numbers');
      for (const match of page.body.matchAll(/href="(\/jobs\/[^"]+\/explain\/[^"]+)"/g))
        links.push(match[1]!);
    }
    const part = await app.inject({
      url: `/jobs/${id}/explain/SV/velocity`,
      headers: { 'hx-request': 'true' },
    });
    expect(part.body).not.toContain('<!doctype');
    expect(part.body).toMatch(/Formula.*With numbers/);
    // The formula works in m/s; the reader of this job reads ft/s, and reads it first.
    expect(part.body).toMatch(/<strong>[\d.]+ ft\/s<\/strong><span> \([\d.]+ m\/s\)/);
  });

  it('says so where there is no such thing', async () => {
    const { app, id } = await testApp();
    for (const url of [
      '/nothing',
      '/jobs/none',
      `/jobs/${id}/explain/NONE/flow`,
      `/jobs/${id}/explain/SV/none`,
      '/jobs/none/file',
      '/jobs/none/delete',
      '/assets/none.css',
    ]) {
      const answer = await app.inject(url);
      expect(answer.statusCode, url).toBe(404);
      expect(answer.body).toContain('<main id="main"');
    }
  });
});

describe('a job file', () => {
  it('comes down and goes up again as the same job', async () => {
    const { app, id, store } = await testApp();
    const file = await app.inject(`/jobs/${id}/file`);
    expect(file.headers['content-disposition']).toBe(
      'attachment; filename="Cottage at Fern End invented.hightap.json"',
    );
    const answer = await app.inject(upload(file.rawPayload));
    expect(answer.statusCode).toBe(303);
    expect(await listJobs(store)).toHaveLength(2);
    expect((await app.inject(answer.headers.location!)).body).toContain(
      smallJob.name.replace('(invented)', ''),
    );
  });

  it.each([
    ['empty', '', 422, /empty/],
    ['cut short', smallDocument.slice(0, 700), 422, /no job/],
    ['no JSON', 'hello', 422, /no job/],
    ['of a newer format', smallDocument.replace('"version":2', '"version":99'), 422, /99/],
    ['with a loop', smallDocument.replace('"from":"street"', '"from":"T1"'), 422, /ring|street/],
    ['with a missing parent', smallDocument.replace('"from":"RC"', '"from":"GONE"'), 422, /GONE/],
    ['with an unknown size', smallDocument.replace('3/4 PEX 14', '7/8 PEX 14'), 422, /7\/8/],
    ['with keys of every object', `{"__proto__":{"x":1},${smallDocument.slice(1)}`, 422, /__proto__/],
    ['over 20 MB', ' '.repeat(21_000_000), 413, /20 MB/],
  ])('%s is refused in words, and nothing is kept', async (_what, content, status, says) => {
    const { app, store } = await testApp();
    const answer = await app.inject(upload(content));
    expect(answer.statusCode).toBe(status);
    expect(answer.body).toMatch(says);
    expect(answer.body).toContain('id="upload:file:problem"');
    expect(await listJobs(store)).toHaveLength(1);
  });

  it('has to come as a file', async () => {
    const { app, post, store } = await testApp();
    expect((await post('/jobs/upload', { file: smallDocument })).statusCode).toBe(415);
    expect((await app.inject({ ...upload(smallDocument), payload: `--${boundary}` })).statusCode).toBe(422);
    expect((await app.inject({ ...upload(''), payload: `--${boundary}--\r\n` })).statusCode).toBe(422);
    expect(await listJobs(store)).toHaveLength(1);
  });
});

describe('jobs', () => {
  it('are made from a starting job', async () => {
    const { post, app, store } = await testApp();
    const answer = await post('/jobs', { name: 'Mill Lane (invented)', start: 'small' });
    expect(answer.statusCode).toBe(303);
    expect((await app.inject(answer.headers.location!)).body).toContain('Mill Lane (invented)');
    expect((await post('/jobs', { name: '', start: 'small' })).statusCode).toBe(422);
    expect((await post('/jobs', { name: 'x', start: 'none' })).statusCode).toBe(422);
    expect(await listJobs(store)).toHaveLength(2);
  });

  it('are deleted after a question', async () => {
    const { app, post, id, store } = await testApp();
    expect((await app.inject(`/jobs/${id}/delete`)).body).toContain(
      'goes to the bin, where it can be restored for 30 days',
    );
    expect(await listJobs(store)).toHaveLength(1);
    expect((await post(`/jobs/${id}/delete`, {})).statusCode).toBe(303);
    expect(await listJobs(store)).toHaveLength(0);
    expect((await app.inject('/')).headers.location).toBe('/jobs');
    expect((await app.inject(`/jobs/${id}`)).statusCode).toBe(404);
  });
});

describe('a kept job that does not compute', () => {
  it('is named in the list, explained on its page, and can be had as a file and deleted', async () => {
    const { app, post, id, document } = await testApp(smallDocument.replace('"from":"T2"', '"from":"GONE"'));
    expect((await app.inject('/jobs')).body).toContain('does not compute');
    const page = await app.inject(`/jobs/${id}`);
    expect(page.statusCode).toBe(409);
    expect(page.body).toContain('Run KSC comes from GONE, and there is no such run.');
    expect((await post(`/jobs/${id}/levels`, { name: 'Attic', elevation: '22 ft' })).statusCode).toBe(409);
    expect((await app.inject(`/jobs/${id}/file`)).body).toBe(await document());
    expect((await post(`/jobs/${id}/delete`, {})).statusCode).toBe(303);
  });
});
