import { connect } from 'node:net';
import { gzipSync } from 'node:zlib';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { buildApp } from '../../server/app.tsx';
import { guards } from '../../server/http/guard-requests.ts';
import { routesOf } from '../../server/http/route-list.ts';
import { safeFileName } from '../../server/http/safe-file-name.ts';
import { createJob, listJobs } from '../../server/storage/job-store.ts';
import { jobPages } from '../../views/parts/job-nav.tsx';
import { smallDocument, smallJob } from './small-job.ts';
import { testStore } from './storage/test-store.ts';
import { noon, testApp } from './test-app.ts';

const form = { 'content-type': 'application/x-www-form-urlencoded' };

describe('a script kept in a job', () => {
  const payloads = [
    '<script>attack()</script>',
    '" onmouseover="attack()" x="',
    "' autofocus onfocus='attack()",
    '</textarea></title></option><svg onload=attack()>',
    'javascript:attack()',
    '<a href="javascript:attack()">attack</a>',
    '&lt;script&gt;attack()&lt;/script&gt;',
  ];
  const filled = (payload: string) =>
    JSON.stringify({
      ...smallJob,
      name: payload,
      note: payload,
      levels: smallJob.levels.map((level) => ({ ...level, name: payload })),
      groups: smallJob.groups.map((group) => ({ ...group, name: payload })),
      fixtures: smallJob.fixtures.map((fixture) => ({ ...fixture, name: payload, room: payload })),
      schemes: smallJob.schemes.map((scheme) => ({
        ...scheme,
        name: payload,
        runs: scheme.runs.map((run) => ({ ...run, note: payload })),
      })),
    });

  it.each(payloads)('is text on every page: %s', async (payload) => {
    const { app, id } = await testApp(filled(payload));
    const own = jobPages.map(([address]) => `/jobs/${id}${address}`);
    const others = [
      '/jobs',
      `/jobs/${id}/delete`,
      `/jobs/${id}/runs/T1`,
      `/jobs/${id}/explain/SH/cold-margin`,
    ];
    const shown: string[] = [];
    for (const url of [...own, ...others]) {
      const { statusCode, body } = await app.inject(url);
      expect(statusCode, url).toBe(200);
      expect(attacksIn(body), url).toEqual([]);
      if (body.includes('attack()')) shown.push(url);
    }
    expect(shown.length).toBeGreaterThan(5);
    await app.close();
  });

  it('is found by this test where it is not escaped', () => {
    const found = payloads.map(
      (payload) =>
        attacksIn(
          `<p>${payload}</p><textarea>${payload}</textarea><a href="${payload}" title='${payload}'>x</a>`,
        ).length,
    );
    // What comes escaped already is text wherever it is put.
    expect(found.map((count) => count > 0)).toEqual(payloads.map((payload) => !payload.startsWith('&lt;')));
  });
});

describe('a post from another site', () => {
  const foreign = { ...form, 'sec-fetch-site': 'cross-site', origin: 'https://elsewhere.test' };

  it('changes nothing by any route that writes', async () => {
    const { app, id, store, document } = await testApp();
    const before = await document();
    const writes = routesOf(app).filter(({ method }) => method !== 'GET' && method !== 'HEAD');
    expect(writes.length).toBeGreaterThan(30);
    for (const { method, path } of writes) {
      const url = path.replace(':id', id).replace(/:\w+/g, 'T1');
      const { statusCode } = await app.inject({
        method: method as 'POST',
        url,
        headers: foreign,
        payload: 'name=x',
      });
      expect(statusCode, `${method} ${path}`).toBe(403);
    }
    expect(await document()).toBe(before);
    expect(await listJobs(store)).toHaveLength(1);
    await app.close();
  });

  it('would delete a job if the guard went', async () => {
    const store = await testStore();
    const id = await createJob(store, smallJob.name, smallDocument, noon);
    const app = await buildApp({ store, guards: { ...guards, origin: () => true } });
    const { statusCode } = await app.inject({ method: 'POST', url: `/jobs/${id}/delete`, headers: foreign });
    expect(statusCode).toBe(303);
    expect(await listJobs(store)).toHaveLength(0);
    await app.close();
  });
});

describe('a name of a job', () => {
  const names = [
    'a"; filename="run.exe',
    'a\\"; x=y',
    '../../etc/passwd',
    '\u202eexe.job',
    'ünï"%0d%0aset-cookie: a=b',
  ];
  const whole = /^(?:attachment|inline); filename="(?!\.)[A-Za-z0-9 ._-]+"$/;

  it.each(names)('adds nothing to the header of a file: %s', async (name) => {
    const { app, id } = await testApp(JSON.stringify({ ...smallJob, name }));
    const files = routesOf(app).filter(
      ({ method, path }) => method === 'GET' && /^\/jobs\/:id\/(file|takeoff\.|sheet\.)/.test(path),
    );
    let sent = 0;
    for (const { path } of files) {
      const { headers } = await app.inject(path.replace(':id', id));
      expect(headers['set-cookie']).toBeUndefined();
      if (headers['content-disposition'] === undefined) continue;
      expect(headers['content-disposition'], path).toMatch(whole);
      sent++;
    }
    expect(sent).toBeGreaterThan(1);
    await app.close();
  });

  it('would add to it if it were put there as it is', () => {
    for (const name of names) {
      expect(`attachment; filename="${name}"`).not.toMatch(whole);
      expect(`attachment; filename="${safeFileName(name, '.json')}"`).toMatch(whole);
    }
  });
});

describe('a body that comes in compressed', () => {
  const fields = `name=Mill+Lane&start=small&pad=${'x'.repeat(150_000)}`;
  it.each([
    ['gzip', gzipSync(fields), 0],
    // The same fields as they are, which shows that it is the compression that is refused.
    [undefined, Buffer.from(fields), 1],
  ])('of %s is never unfolded', async (encoding, payload, kept) => {
    const { app, store } = await testApp();
    const { statusCode } = await app.inject({
      method: 'POST',
      url: '/jobs',
      headers: { ...form, ...(encoding === undefined ? {} : { 'content-encoding': encoding }) },
      payload,
    });
    expect(statusCode).toBe(kept === 1 ? 303 : 422);
    expect(await listJobs(store)).toHaveLength(1 + kept);
    await app.close();
  });
});

describe('an address of an asset', () => {
  it('reaches no file outside the folder, as bytes that no client has tidied', async () => {
    const { app } = await testApp();
    const address = await app.listen({ host: '127.0.0.1', port: 0 });
    const ask = (path: string) => rawAnswer(Number(new URL(address).port), path);
    const named = /\/assets\/[0-9a-f]{12}\//.exec((await app.inject('/jobs')).body)?.[0] ?? 'none';
    for (const folder of ['/assets/', named]) {
      expect(await ask(`${folder}app.css`)).toMatch(/^HTTP\/1\.1 200/);
      for (const up of [
        '..',
        '%2e%2e',
        '.%2e',
        '..%2f..',
        '%2e%2e%2f%2e%2e',
        '..%5c..',
        '....//..',
        '%252e%252e',
        '..%00',
      ]) {
        for (const path of [`${folder}${up}/layout.tsx`, `${folder}${up}/${up}/package.json`]) {
          const answer = await ask(path);
          expect(answer, path).toMatch(/^HTTP\/1\.1 4/);
          expect(answer).not.toMatch(/"hightap"|export function/);
        }
      }
    }
    await app.close();
  });
});

/** What a browser would run that bears the word `attack`: scripts, handlers, addresses of scripts. */
function attacksIn(html: string): string[] {
  const found: string[] = [];
  const visit = (node: DefaultTreeAdapterTypes.Node): void => {
    if ('attrs' in node) {
      const text = node.childNodes.map((child) => ('value' in child ? child.value : '')).join('');
      if (node.tagName === 'script' && text.includes('attack')) found.push('script');
      for (const { name, value } of node.attrs) {
        if (/^on/i.test(name)) found.push(name);
        if (/^(?:href|src|action|formaction|hx-\w+|data)$/.test(name) && /^\s*javascript:/i.test(value))
          found.push(name);
      }
    }
    if ('childNodes' in node) for (const child of node.childNodes) visit(child);
  };
  visit(parse(html));
  return found;
}

function rawAnswer(port: number, path: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1');
    let said = '';
    socket.on('data', (bytes: Buffer) => {
      said += bytes.toString();
    });
    socket.on('error', reject);
    socket.on('close', () => resolve(said));
    socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`);
  });
}
