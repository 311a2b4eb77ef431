import { describe, expect, it } from 'vitest';
import { smallDocument, smallJob } from '../small-job.ts';
import { testApp } from '../test-app.ts';
import { apiOf } from './api-of.ts';

interface Named {
  name: string;
}

describe('kept jobs through the JSON interface', () => {
  it('are listed, read, and replaced on the revision that was read', async () => {
    const { app, id, document } = await testApp();
    const { send } = apiOf(app);
    expect((await send('GET', '/api/jobs')).json).toEqual({
      jobs: [{ id, name: smallJob.name, revision: 1 }],
    });
    const read = await send('GET', `/api/jobs/${id}`);
    expect(read.json).toEqual(JSON.parse(smallDocument));
    expect(read.headers.etag).toBe('"1"');
    const renamed = { ...(read.json as Named), name: 'Fern End, east' };
    const replaced = await send('PUT', `/api/jobs/${id}`, renamed, { 'if-match': '"1"' });
    expect(replaced).toMatchObject({ status: 200, json: { id, name: 'Fern End, east', revision: 2 } });
    expect(replaced.headers.etag).toBe('"2"');
    expect(JSON.parse(await document()).name).toBe('Fern End, east');
  });

  it('are not replaced on an older revision, nor without one', async () => {
    const { app, id, document } = await testApp();
    const { send } = apiOf(app);
    const first = { ...(JSON.parse(smallDocument) as Named), name: 'First' };
    const second = { ...first, name: 'Second' };
    await send('PUT', `/api/jobs/${id}`, first, { 'if-match': '"1"' });
    const late = await send('PUT', `/api/jobs/${id}`, second, { 'if-match': '"1"' });
    expect(late).toMatchObject({
      status: 412,
      json: { problems: [expect.stringContaining('If-Match "2"')] },
    });
    expect((await send('PUT', `/api/jobs/${id}`, second)).status).toBe(428);
    expect((await send('PUT', `/api/jobs/${id}`, second, { 'if-match': '*' })).status).toBe(412);
    expect(JSON.parse(await document()).name).toBe('First');
  });

  it('are kept anew, and refused in sentences where they do not compute', async () => {
    const { app } = await testApp();
    const { send } = apiOf(app);
    const job = JSON.parse(smallDocument) as Named & { schemes: { runs: { from: string }[] }[] };
    const kept = await send('POST', '/api/jobs', { ...job, name: 'Third' });
    expect(kept.status).toBe(201);
    const { id } = kept.json as { id: string };
    expect(kept.headers.location).toBe(`/api/jobs/${id}`);
    expect((await send('GET', `/api/jobs/${id}`)).json).toMatchObject({ name: 'Third' });
    job.schemes[0]!.runs[0]!.from = 'nowhere';
    const refused = await send('POST', '/api/jobs', job);
    expect(refused.status).toBe(422);
    expect(JSON.stringify(refused.json)).toContain('nowhere');
    expect((await send('POST', '/api/jobs', { name: 'x' })).status).toBe(422);
    expect((await send('GET', '/api/jobs/nothing')).status).toBe(404);
    expect((await send('PUT', '/api/jobs/nothing', job, { 'if-match': '"1"' })).status).toBe(404);
  });
});
