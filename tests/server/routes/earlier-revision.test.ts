import { describe, expect, it } from 'vitest';
import { routesOf } from '../../../server/http/route-list.ts';
import { putInBin } from '../../../server/storage/bin-store.ts';
import { noon, type TestApp, testApp } from '../test-app.ts';

const longer = { line: "1/2 PEX 45' up 6' 1 tee 2 ells to SH hot" };

/** Every page and file of a job, with a place where its address asks for one. */
function pagesOf({ app }: TestApp, address: string): string[] {
  const places: Readonly<Record<string, string>> = { owner: 'SHH', quantity: 'flow', number: '1' };
  const pages = routesOf(app).filter(({ method, path }) => method === 'GET' && path.startsWith('/jobs/:id'));
  return pages.map(({ path }) =>
    path
      .replace(':id', address)
      .replace('runs/:place', 'runs/SHH')
      .replace('fixtures/:place', 'fixtures/SH')
      .replaceAll(/:(\w+)/g, (_, name: string) => places[name] ?? name),
  );
}

describe('an earlier revision', () => {
  it('answers on every page of a job but the one that deletes it', async () => {
    const test = await testApp();
    await test.post(`/jobs/${test.id}/runs/SHH/line`, longer);
    const pages = pagesOf(test, `${test.id}~1`);
    expect(pages.length).toBeGreaterThan(12);
    for (const page of pages) {
      const { statusCode, headers, body } = await test.app.inject(page);
      expect([page, statusCode]).toEqual([page, page.endsWith('/delete') ? 404 : 200]);
      if (String(headers['content-type']).startsWith('text/html') && statusCode === 200) {
        expect(body, page).toContain('Revision 1 of this job; read only.');
        expect(body, page).toContain(`action="/jobs/${test.id}/history/1/back"`);
      }
    }
  });

  it.each(['~nonsense', '~9', '~0', '~', '~1~1', '~-1', '~1e3', "~'"])(
    'is refused in words on every page where the address ends in %s',
    async (ending) => {
      const test = await testApp();
      for (const page of pagesOf(test, `${test.id}${ending}`)) {
        const { statusCode } = await test.app.inject(page);
        // The history's own addresses name a revision themselves.
        const own = /\/history\/1\//.test(page);
        expect([page, statusCode]).toEqual([page, own ? 200 : 404]);
      }
    },
  );

  it('has every field of the workbench disabled, and no button that would change it', async () => {
    const { app, post, id } = await testApp();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    for (const page of [
      '',
      '/runs/SHH',
      '/fixtures/SH',
      '/add-runs',
      '/compare',
      '/sizing',
      '/takeoff',
      '/sheet',
    ]) {
      const { body } = await app.inject(`/jobs/${id}~1${page}`);
      const open = body.replaceAll(/<fieldset class="read-only" disabled[\s\S]*?<\/fieldset>/g, '');
      const posts = [...open.matchAll(/<form[^>]*method="post"[^>]*>/g)].map(([form]) => form);
      expect(posts, page).toEqual([`<form method="post" action="/jobs/${id}/history/1/back">`]);
    }
  });

  it('is the target of every link of its pages, or leads to the job or out of it', async () => {
    const { app, post, id } = await testApp();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const asked = new Set<string>();
    for (const page of ['', '/compare', '/sizing', '/takeoff', '/history', '/sheet', '/runs/SHH']) {
      const { body } = await app.inject(`/jobs/${id}~1${page}`);
      for (const [, link = ''] of body.matchAll(/ href="(\/[^"#]*)/g))
        asked.add(link.replaceAll('&amp;', '&'));
    }
    expect(asked.size).toBeGreaterThan(20);
    for (const link of asked) {
      expect([link, (await app.inject(link)).statusCode]).toEqual([link, link === '/' ? 303 : 200]);
    }
  });

  it('has its own figures, by the prices of the job’s own book', async () => {
    const { app, post, id, document } = await testApp();
    const first = await document();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    const book = (await post('/prices', { name: 'Our own book', start: 'shipped' })).headers.location!;
    await post(`/jobs/${id}/prices`, { book: book.split('/').at(-1)! });
    expect((await app.inject(`/jobs/${id}/takeoff`)).body).toContain('Our own book');
    expect((await app.inject(`/jobs/${id}~1/takeoff`)).body).toContain('Our own book');
    expect((await app.inject(`/jobs/${id}~1/file`)).body).toBe(first);
    expect((await app.inject(`/jobs/${id}~1/runs/SHH`)).body).toContain('value="15\'"');
  });

  it('is gone back to from its own pages, whatever the job shows by then', async () => {
    const { post, id, document } = await testApp();
    const first = await document();
    await post(`/jobs/${id}/runs/SHH/line`, longer);
    expect((await post(`/jobs/${id}/history/1/back`, {})).statusCode).toBe(303);
    expect(JSON.parse(await document())).toEqual(JSON.parse(first));
  });

  it('goes with its job into the bin', async () => {
    const { app, store, id } = await testApp();
    expect((await app.inject(`/jobs/${id}~1`)).statusCode).toBe(200);
    await putInBin(store, 'job', id, noon);
    expect((await app.inject(`/jobs/${id}~1`)).statusCode).toBe(404);
  });
});
