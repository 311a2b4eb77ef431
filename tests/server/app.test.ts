import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editActions } from '../../server/routes/edits.ts';
import { listJobs } from '../../server/storage/job-store.ts';
import { smallJob } from './small-job.ts';
import { testApp } from './test-app.ts';

describe('guards', () => {
  it('refuse a name that is not this machine', async () => {
    const { app, id } = await testApp();
    const answer = await app.inject({ url: `/jobs/${id}`, headers: { host: 'elsewhere.test' } });
    expect(answer.statusCode).toBe(403);
    expect(answer.body).not.toContain('Fern End');
  });

  it('refuse a write from another site, on every form', async () => {
    const { post, id, document, store } = await testApp();
    const before = await document();
    const paths = [
      '/jobs',
      '/jobs/upload',
      `/jobs/${id}/delete`,
      ...editActions.map(({ path }) => `/jobs/${id}${path.replace(':place', 'T1')}`),
    ];
    for (const path of paths) {
      const foreign = await post(path, { name: 'x', start: 'small' }, { 'sec-fetch-site': 'cross-site' });
      expect(foreign.statusCode, path).toBe(403);
      const byOrigin = await post(path, { name: 'x', start: 'small' }, { origin: 'http://elsewhere.test' });
      expect(byOrigin.statusCode, path).toBe(403);
    }
    expect(await document()).toBe(before);
    expect(await listJobs(store)).toHaveLength(1);
  });

  it('let nothing inline run, on pages and on errors', async () => {
    const { app, id } = await testApp();
    for (const url of ['/', '/jobs', `/jobs/${id}`, '/nothing', '/%zz', '/assets/app.css']) {
      const { headers } = await app.inject(url);
      expect(headers['content-security-policy'], url).toContain("default-src 'none'");
      expect(headers['content-security-policy']).not.toContain('unsafe');
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('same-origin');
    }
    const { body } = await app.inject(`/jobs/${id}`);
    expect(body).not.toMatch(/ style="| on[a-z]+="|<style|<script(?! src="\/assets\/)/);
  });

  it('serve the scripts and the style sheet', async () => {
    const { app } = await testApp();
    for (const [url, type] of [
      ['/assets/app.css', 'text/css'],
      ['/assets/app.js', 'javascript'],
      ['/assets/htmx.js', 'javascript'],
      ['/assets/uplot.js', 'javascript'],
      ['/assets/uplot.css', 'text/css'],
    ] as const) {
      const answer = await app.inject(url);
      expect(answer.statusCode, url).toBe(200);
      expect(answer.headers['content-type']).toContain(type);
      expect(answer.headers['cache-control']).toContain('max-age');
    }
    expect((await app.inject('/assets/../../package.json')).statusCode).toBe(404);
    expect((await app.inject('/assets/%2e%2e/%2e%2e/package.json')).statusCode).toBeGreaterThanOrEqual(400);
  });
});

describe('whatever a client sends', () => {
  it.each([
    ['/%', 400],
    ['/jobs/%ff%fe', 400],
    [`/jobs/${'a'.repeat(150)}`, 404],
    ['/jobs/'.padEnd(400, 'a'), 414],
    ['/jobs//', 404],
    ['/jobs/../jobs/%00', 404],
  ])('%s is answered in words', async (url, status) => {
    const { app } = await testApp();
    const answer = await app.inject(url);
    expect(answer.statusCode).toBe(status);
    expect(answer.body).toContain('<main id="main"');
  });

  it.each([
    ['application/json', '{"line": "x"}', 415],
    ['text/plain', 'x', 415],
    ['application/x-www-form-urlencoded; charset=\u00ff', 'line=%', 422],
    ['multipart/form-data', 'x', 422],
    ['nonsense', 'x', 415],
    ['application/x-www-form-urlencoded', `line=${'x'.repeat(300_000)}`, 413],
    ['application/x-www-form-urlencoded', 'line=%ff%fe%zz', 422],
    ['application/x-www-form-urlencoded', '__proto__=1&constructor=2&line[]=3', 422],
    ['application/x-www-form-urlencoded', '', 422],
  ])('a body of %s is answered in words', async (type, payload, status) => {
    const { app, id, document } = await testApp();
    const before = await document();
    const answer = await app.inject({
      method: 'POST',
      url: `/jobs/${id}/runs/T1/line`,
      headers: { 'content-type': type },
      payload,
    });
    expect([status, 400, 415]).toContain(answer.statusCode);
    expect(answer.body).toContain('<main id="main"');
    expect(await document()).toBe(before);
  });

  it('is never our mistake, for any address', async () => {
    const { app } = await testApp();
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom('GET', 'POST', 'PUT', 'DELETE', 'HEAD', 'OPTIONS'),
        fc.array(
          fc.oneof(
            fc.string({ unit: 'grapheme' }),
            fc.constantFrom('jobs', 'explain', '%', '%25', '..', '?', '#'),
          ),
        ),
        async (method, parts) => {
          const url = `/${parts.join('/')}`;
          const answer = await app.inject({
            method: method as 'GET',
            url: url.replace(/[^\x21-\x7e]/gu, (sign) =>
              /^[\ud800-\udfff]$/.test(sign) ? '?' : encodeURIComponent(sign),
            ),
          });
          expect(answer.statusCode).toBeLessThan(500);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('is never our mistake, for any fields of any form', async () => {
    const { post, id, document } = await testApp();
    const words = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.constantFrom(
        '1e308',
        'NaN',
        '-1 ft',
        '__proto__',
        'constructor',
        "3/4 PEX 10'",
        'street',
        'T1',
        '9999999 ft',
        '0 ft',
        '\u0000',
        'S1',
        'static',
        'well',
        'pex',
        'yes',
        '120 F',
      ),
    );
    const names = [
      'line',
      'from',
      'id',
      'size',
      'material',
      'joint',
      'length',
      'rise',
      'fittings',
      'end',
      'note',
      'name',
      'kind',
      'count',
      'use',
      'level',
      'chosen',
      'low',
      'high',
      'elevation',
      'revision',
      'path',
      'units',
      'profile',
      '__proto__',
      'toString',
    ];
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...editActions),
        fc.constantFrom('T1', 'SH', 'L1', 'G1', 'none', '__proto__', '%00'),
        fc.dictionary(fc.constantFrom(...names), words),
        async ({ path }, place, fields) => {
          const answer = await post(`/jobs/${id}${path.replace(':place', place)}`, { ...fields });
          expect(answer.statusCode).toBeLessThan(500);
        },
      ),
      { numRuns: 250 },
    );
    expect(JSON.parse(await document())).toMatchObject({ format: 'hightap-job' });
  });
});

describe('HTML in every name', () => {
  const evil = `<img src=x onerror=alert(1)>"'&`;
  const document = JSON.stringify({
    ...smallJob,
    name: evil,
    note: evil,
    levels: smallJob.levels.map((level) => ({ ...level, name: evil })),
    groups: smallJob.groups.map((group) => ({ ...group, name: evil })),
    fixtures: smallJob.fixtures.map((fixture) => ({ ...fixture, name: evil, room: evil })),
    schemes: smallJob.schemes.map((scheme) => ({
      ...scheme,
      name: evil,
      runs: scheme.runs.map((run) => (run.id === 'WCC' ? { ...run, note: evil } : run)),
    })),
  });

  it('is text on every page', async () => {
    const { app, id, postInPlace, post } = await testApp(document);
    const answers = [
      await app.inject('/jobs'),
      await app.inject(`/jobs/${id}`),
      await app.inject(`/jobs/${id}/delete`),
      await app.inject(`/jobs/${id}/explain/SV/units`),
      await app.inject(`/jobs/${id}/explain/SH/cold-margin`),
      await app.inject(`/jobs/${id}?path=${encodeURIComponent(evil)}`),
      await postInPlace(`/jobs/${id}/job`, { name: `${evil}2`, note: evil, chosen: 'S1' }),
      await postInPlace(`/jobs/${id}/runs/T1/line`, { line: evil }),
      await post(`/jobs/${id}/runs/T1/line`, { line: evil, path: evil }),
      await post(`/jobs/${id}/runs/T1`, {
        id: evil,
        from: evil,
        size: evil,
        material: evil,
        length: evil,
        fittings: evil,
        end: evil,
      }),
      await post(`/jobs/${id}/fixtures`, { name: evil, kind: evil, coldFrom: evil, coldLine: evil }),
    ];
    for (const answer of answers) {
      expect(answer.statusCode).toBeLessThan(500);
      // Within the quotes of an attribute the sign < begins nothing.
      const outsideAttributes = answer.body.replace(/="[^"]*"/g, '=""');
      expect(outsideAttributes).not.toContain('<img');
      expect(outsideAttributes).not.toContain('onerror="');
    }
    expect(answers[1]?.body).toContain('&lt;img src=x');
  });

  it('comes back from its field as it was typed', async () => {
    const { app, id, post, document } = await testApp();
    const typed = `a &lt;b&gt; "c" &amp; 'd' <e>`;
    await post(`/jobs/${id}/job`, { name: typed, note: '', chosen: 'S1' });
    expect(JSON.parse(await document()).name).toBe(typed);
    const { body } = await app.inject(`/jobs/${id}`);
    const value = /id="job:name"[^>]*? value="([^"]*)"/.exec(body)?.[1];
    expect(value?.replaceAll('&#34;', '"').replaceAll('&amp;', '&')).toBe(typed);
  });
});
