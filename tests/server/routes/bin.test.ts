import { describe, expect, it } from 'vitest';
import { listBin } from '../../../server/storage/bin-store.ts';
import { testApp } from '../test-app.ts';

describe('the page of the bin', () => {
  it('restores a deleted job as it was', async () => {
    const { app, post, id, document } = await testApp();
    const before = await document();
    expect((await app.inject('/bin')).body).toContain('The bin is empty.');
    await post(`/jobs/${id}/delete`, {});
    expect((await app.inject('/bin')).body).toContain('Job, deleted 2026-11-25, kept until 2026-12-25');
    const answer = await post(`/bin/jobs/${id}/restore`, {});
    expect(answer.headers.location).toBe(`/jobs/${id}`);
    expect(await document()).toBe(before);
    expect((await app.inject(`/jobs/${id}`)).statusCode).toBe(200);
    expect((await post(`/bin/jobs/${id}/restore`, {})).statusCode).toBe(404);
  });

  it('deletes for good what is in it, and nothing that is not', async () => {
    const { post, id, store } = await testApp();
    expect((await post(`/bin/jobs/${id}/delete`, {})).statusCode).toBe(404);
    await post(`/jobs/${id}/delete`, {});
    expect((await post(`/bin/jobs/${id}/delete`, {})).headers.location).toBe('/bin');
    expect(await listBin(store)).toEqual([]);
    expect((await post(`/bin/jobs/${id}/restore`, {})).statusCode).toBe(404);
    expect((await post(`/bin/toString/${id}/restore`, {})).statusCode).toBe(404);
  });

  it('lists a deleted price book', async () => {
    const { app, post } = await testApp();
    const made = await post('/prices', { name: 'Mine', start: 'shipped' });
    await post(`${made.headers.location}/delete`, {});
    expect((await app.inject('/bin')).body).toContain('Price book, deleted 2026-11-25');
    await post(`/bin${made.headers.location}/restore`, {});
    expect((await app.inject(made.headers.location!)).statusCode).toBe(200);
  });
});
