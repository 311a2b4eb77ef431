import { describe, expect, it } from 'vitest';
import { listTrials } from '../../../server/storage/trial-store.ts';
import { swapped, type TestApp, testApp } from '../test-app.ts';

const longer = { line: "1/2 PEX 120' up 6' 1 tee 2 ells to SH hot" };
const wider = { line: "3/4 PEX 15' up 6' 1 tee 2 ells to SH hot" };
const attic = { name: 'Attic', elevation: '22 ft' };

/** Begins a trial of the one job and gives its address. */
async function begin({ post, id }: TestApp): Promise<string> {
  const answer = await post(`/jobs/${id}/try`, {});
  expect(answer.statusCode).toBe(303);
  const [, address = ''] = /^\/jobs\/([^#]+)#main$/.exec(answer.headers.location ?? '') ?? [];
  expect(address.startsWith(`${id}~t`)).toBe(true);
  return address;
}

/** The cells of the table of before and after, by the heads of its rows. */
function beforeAfter(body: string): Map<string, string[]> {
  const [, table = ''] = /aria-label="Before and after">(.*?)<\/section>/s.exec(body) ?? [];
  const rows = [...table.matchAll(/<th scope="row">(.*?)<\/th><td>(.*?)<\/td><td>(.*?)<\/td>/g)];
  return new Map(rows.map(([, head = '', before = '', after = '']) => [head, [before, after]]));
}

describe('trying changes', () => {
  it.each(['post', 'postInPlace'] as const)('shows before and after and saves nothing (%s)', async (send) => {
    const test = await testApp();
    const { app, id, document } = test;
    const first = await document();
    expect((await app.inject(`/jobs/${id}`)).body).toContain(`action="/jobs/${id}/try"`);
    const trial = await begin(test);
    expect((await app.inject(`/jobs/${trial}`)).body).toContain('Trying: 0 changes, not saved');

    const answer = await test[send](`/jobs/${trial}/runs/SHH/line`, longer);
    expect(answer.statusCode).toBe(send === 'post' ? 303 : 200);
    if (send === 'postInPlace') {
      expect(swapped(answer.body)).toContain('trial');
      expect(answer.body).toContain('Trying: 1 change, not saved');
    }
    const { body } = await app.inject(`/jobs/${trial}`);
    expect(body).toContain('Trying: 1 change, not saved');
    expect(body).toContain('Run SHH: length 15&#39; becomes 120&#39;');
    const table = beforeAfter(body);
    expect(table.get('Answer')).toEqual(['Pass', 'Short']);
    expect(table.get('Worst fixture')?.[1]).toBe('Rain shower, hot');
    expect(table.get('Margin')?.map((cell) => cell.charAt(0))).toEqual(['+', '−']);
    expect(body).toMatch(/Findings come<\/h3><ul><li>[^<]*Rain shower/);
    expect(await document()).toBe(first);
    expect((await app.inject(`/jobs/${id}`)).body).not.toContain('not saved');
  });

  it.each(['post', 'postInPlace'] as const)('drops them (%s)', async (send) => {
    const test = await testApp();
    const { app, id, document, store } = test;
    const first = await document();
    const trial = await begin(test);
    await test[send](`/jobs/${trial}/runs/SHH/line`, longer);
    const answer = await test[send](`/jobs/${trial}/drop`, {});
    expect([answer.statusCode, answer.headers.location]).toEqual([303, `/jobs/${id}?done=drop#main`]);
    expect((await app.inject(`/jobs/${id}?done=drop`)).body).toContain('Dropped: the job is as it was');
    expect(await document()).toBe(first);
    expect(await listTrials(store, id)).toEqual([]);
    expect((await app.inject(`/jobs/${trial}`)).statusCode).toBe(404);
    for (const verb of ['keep', 'drop', 'try', 'undo']) {
      expect((await test.post(`/jobs/${trial}/${verb}`, {})).statusCode, verb).toBe(404);
    }
  });

  it.each(['post', 'postInPlace'] as const)('keeps them, which undo takes back (%s)', async (send) => {
    const test = await testApp();
    const { app, id, document, store } = test;
    const first = await document();
    const trial = await begin(test);
    await test[send](`/jobs/${trial}/runs/SHH/line`, longer);
    await test[send](`/jobs/${trial}/levels`, attic);
    const answer = await test[send](`/jobs/${trial}/keep`, {});
    expect([answer.statusCode, answer.headers.location]).toEqual([303, `/jobs/${id}?done=keep#main`]);
    expect((await app.inject(`/jobs/${id}?done=keep`)).body).toContain('Kept: what was tried is saved');
    expect(await document()).toContain("120'");
    expect(await document()).toContain('Attic');
    expect(await listTrials(store, id)).toEqual([]);
    expect((await app.inject(`/jobs/${id}/history`)).body).toContain('length 15&#39; becomes 120&#39;');
    await test.post(`/jobs/${id}/undo`, {});
    await test.post(`/jobs/${id}/undo`, {});
    expect(await document()).toBe(first);
  });

  it('merges what is kept with what was saved meanwhile', async () => {
    const test = await testApp();
    const { post, id, document, store } = test;
    const trial = await begin(test);
    await post(`/jobs/${trial}/runs/SHH/line`, longer);
    await post(`/jobs/${id}/levels`, attic);
    const answer = await post(`/jobs/${trial}/keep`, {});
    expect(answer.statusCode).toBe(200);
    expect(answer.body).toContain('Saved, and merged with a change made elsewhere: Level Attic (L3) added');
    expect(await document()).toContain("120'");
    expect(await document()).toContain('Attic');
    expect(await listTrials(store, id)).toEqual([]);
  });

  it('shows both sides where they clash, and loses neither', async () => {
    const test = await testApp();
    const { app, post, id, document } = test;
    const trial = await begin(test);
    await post(`/jobs/${trial}/runs/SHH/line`, longer);
    await post(`/jobs/${id}/runs/SHH/line`, { line: "1/2 PEX 30' up 6' 1 tee 2 ells to SH hot" });
    const saved = await document();
    const answer = await post(`/jobs/${trial}/keep`, {});
    expect(answer.statusCode).toBe(409);
    expect(answer.body).toContain('length 15&#39; becomes 120&#39;');
    expect(answer.body).toContain('length 15&#39; becomes 30&#39;');
    expect(await document()).toBe(saved);
    expect((await app.inject(`/jobs/${trial}`)).body).toContain('Trying: 1 change, not saved');
  });

  it('ends where nothing was changed, and saves no revision', async () => {
    const test = await testApp();
    const { post, id, store } = test;
    const before = await test.app.inject(`/jobs/${id}/history`);
    expect((await post(`/jobs/${await begin(test)}/keep`, {})).statusCode).toBe(303);
    expect(await listTrials(store, id)).toEqual([]);
    expect((await test.app.inject(`/jobs/${id}/history`)).body).toBe(before.body);
  });

  it('goes back and forth within the trial, not before its start', async () => {
    const test = await testApp();
    const { app, post, postInPlace } = test;
    const trial = await begin(test);
    await post(`/jobs/${trial}/runs/SHH/line`, longer);
    const undone = await postInPlace(`/jobs/${trial}/undo`, {});
    expect(undone.body).toContain('Trying: 0 changes, not saved');
    expect((await postInPlace(`/jobs/${trial}/undo`, {})).body).toContain('nothing to undo');
    expect((await postInPlace(`/jobs/${trial}/redo`, {})).body).toContain('Trying: 1 change, not saved');
    expect((await app.inject(`/jobs/${trial}`)).body).toContain('Trying: 1 change, not saved');
  });

  it('says so on every page of the trial, each of which can keep or drop it', async () => {
    const test = await testApp();
    const { app, post, id } = test;
    const trial = await begin(test);
    await post(`/jobs/${trial}/runs/SHH/line`, wider);
    for (const page of [
      '',
      '/compare',
      '/sizing',
      '/takeoff',
      '/history',
      '/sheet',
      '/runs/SHH',
      '/fixtures/SH',
      '/explain/SHH/flow',
    ]) {
      const { statusCode, body } = await app.inject(`/jobs/${trial}${page}`);
      expect([page, statusCode]).toEqual([page, 200]);
      for (const verb of ['keep', 'drop']) {
        expect(body.split(`action="/jobs/${trial}/${verb}"`).length, `${page} ${verb}`).toBe(2);
      }
    }
    expect((await app.inject(`/jobs/${trial}/file`)).body).toContain("3/4 PEX 15'");
    expect((await app.inject(`/jobs/${id}/history`)).body).toContain(`href="/jobs/${trial}"`);
    // A step of a trial is no revision that could be gone back to.
    expect((await app.inject(`/jobs/${id}~2`)).statusCode).toBe(404);
  });

  it('is refused where the job is none, or another’s', async () => {
    const test = await testApp();
    const trial = await begin(test);
    const stolen = `none~${trial.split('~')[1]}`;
    for (const verb of ['keep', 'drop']) {
      expect((await test.post(`/jobs/${stolen}/${verb}`, {})).statusCode).toBe(404);
      expect((await test.post(`/jobs/${test.id}/${verb}`, {})).statusCode).toBe(404);
      expect((await test.post(`/jobs/${test.id}~1/${verb}`, {})).statusCode).toBe(404);
    }
    expect((await test.post('/jobs/none/try', {})).statusCode).toBe(404);
    expect((await test.post(`/jobs/${trial}/try`, {})).headers.location).toBe(`/jobs/${trial}#main`);
  });
});
