import { describe, expect, it } from 'vitest';
import { listRevisions } from '../../../server/storage/revision-store.ts';
import { swapped, testApp } from '../test-app.ts';

const longer = { line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot" };

describe('undo and redo', () => {
  it('go over the whole job, one change at a time, and say what they did', async () => {
    const { post, postInPlace, id, document } = await testApp();
    const states = [await document()];
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    states.push(await document());
    await post(`/jobs/${id}/levels`, { name: 'Attic', elevation: '22 ft' });
    states.push(await document());

    const undone = await postInPlace(`/jobs/${id}/undo`, { liveRevision: '3' });
    expect(undone.statusCode).toBe(200);
    expect(undone.body).toContain('Undone: Level Attic (L3) added.');
    expect(await document()).toBe(states[1]);
    const again = await postInPlace(`/jobs/${id}/undo`, { liveRevision: '2' });
    expect(again.body).toContain('Undone: Run SHH: length 15&#39; becomes 45&#39;.');
    expect(swapped(again.body)).toContain('answer');
    expect(swapped(again.body)).not.toContain('basis:fields');
    expect(await document()).toBe(states[0]);
    const end = await postInPlace(`/jobs/${id}/undo`, { liveRevision: '1' });
    expect([end.statusCode, swapped(end.body)]).toEqual([200, ['notice']]);
    expect(end.body).toContain('nothing to undo');

    const redone = await postInPlace(`/jobs/${id}/redo`, { liveRevision: '1' });
    expect(redone.body).toContain('Redone: Run SHH: length 15&#39; becomes 45&#39;.');
    expect(await document()).toBe(states[1]);
    await post(`/jobs/${id}/redo`, {});
    expect(await document()).toBe(states[2]);
    expect((await postInPlace(`/jobs/${id}/redo`, { liveRevision: '3' })).body).toContain('nothing to redo');
  });

  it('work without the script, and say the same on the page that follows', async () => {
    const { app, post, id, document } = await testApp();
    const before = await document();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const answer = await post(`/jobs/${id}/undo`, { revision: '2', path: 'KS.cold' });
    expect(answer.statusCode).toBe(303);
    expect(answer.headers.location).toBe(`/jobs/${id}?path=KS.cold&done=undo#main`);
    expect(await document()).toBe(before);
    const page = await app.inject(`/jobs/${id}?path=KS.cold&done=undo`);
    expect(page.body).toContain('Undone: Run SHH: length 15&#39; becomes 45&#39;.');
  });

  it('do nothing from a page that is older than the job', async () => {
    const { post, postInPlace, id, document } = await testApp();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const before = await document();
    for (const send of [post, postInPlace]) {
      const answer = await send(`/jobs/${id}/undo`, { revision: '1' });
      expect(answer.statusCode).toBe(409);
      expect(answer.body).toContain('was changed elsewhere');
    }
    expect(await document()).toBe(before);
  });

  it('refuse an address that names no job', async () => {
    const { post } = await testApp();
    expect((await post('/jobs/none/undo', {})).statusCode).toBe(404);
    expect((await post('/jobs/none~tabc/redo', {})).statusCode).toBe(404);
  });
});

describe('a saved change', () => {
  it('is kept with its words', async () => {
    const { post, id, store } = await testApp();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    expect((await listRevisions(store, id)).map(({ change }) => change)).toEqual([
      "Run SHH: length 15' becomes 45'",
      null,
    ]);
  });
});
