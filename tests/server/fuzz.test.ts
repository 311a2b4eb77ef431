import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJob } from '../../server/document/read-job.ts';
import { routesOf } from '../../server/http/route-list.ts';
import { computeJob } from '../../server/workbench/compute-job.ts';
import { smallDocument } from './small-job.ts';
import { testApp } from './test-app.ts';

/** The whole amount by `npm run test:fuzz`; a share of it with every other test. */
const whole = process.env.FUZZ === 'whole';
const files = whole ? 100_000 : 1000;
const requests = whole ? 20_000 : 300;
const seed = 20_261_125;
/** Nothing that a client sends may hold the others up for longer. */
const longest = 1000;

const odd = fc.constantFrom(
  'null',
  '1e999',
  '-1',
  '""',
  '{}',
  '[]',
  '"__proto__"',
  '"-1 ft"',
  '"99999999 psi"',
  '"\\ud800"',
  '[[[[[[[[[[[[',
  '}',
  '\u0000',
);

/** The small job's file with bytes or values put out, in, or in the place of others. */
const mutated = fc
  .array(
    fc.record({
      at: fc.nat(smallDocument.length),
      out: fc.nat(30),
      put: fc.oneof(odd, fc.string({ unit: 'binary', maxLength: 8 }), fc.constant('')),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((changes) =>
    changes.reduce((text, { at, out, put }) => text.slice(0, at) + put + text.slice(at + out), smallDocument),
  );

/** A value of the file changed, so that what follows is still JSON. */
const changedValue = fc.tuple(fc.nat(400), odd).map(([which, put]) => {
  let seen = 0;
  return smallDocument.replace(/: ("[^"]*"|\d+)/g, (all) => (seen++ === which ? `: ${put}` : all));
});

describe('a mutated job file', () => {
  it('is read or refused in sentences, without delay', { timeout: 3_600_000 }, async () => {
    let read = 0;
    await fc.assert(
      fc.asyncProperty(fc.oneof(mutated, changedValue), async (text) => {
        const started = performance.now();
        const job = await readJob(text);
        if (job.ok) {
          read++;
          computeJob(job.job);
        } else {
          expect(job.problems.join('')).not.toBe('');
        }
        expect(performance.now() - started).toBeLessThan(longest);
      }),
      { numRuns: files, seed },
    );
    // A mutation that is always refused at the door would try nothing behind it.
    expect(read).toBeGreaterThan(files / 100);
  });
});

describe('a mutated request', () => {
  it('to any route is never our mistake, without delay', { timeout: 3_600_000 }, async () => {
    const { app, id } = await testApp();
    const routes = routesOf(app).filter(({ path }) => !path.includes('*'));
    expect(routes.length).toBeGreaterThan(60);
    const word = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.constantFrom(id, 'S1', 'T1', 'SH', 'L1', '__proto__', '1e308', '../..', 'pressure', '120 F', '1'),
    );
    const names = fc.constantFrom(
      'id',
      'line',
      'name',
      'kind',
      'size',
      'revision',
      'keep',
      'as',
      'by',
      '__proto__',
    );
    const fields = fc.dictionary(names, word);
    const types = fc.constantFrom(
      'application/x-www-form-urlencoded',
      'application/json',
      'multipart/form-data; boundary=b',
      'text/plain',
      '\u00ff',
    );
    const heap: number[] = [];
    let asked = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...routes),
        fc.array(word, { minLength: 4, maxLength: 4 }),
        fields,
        fields,
        types,
        fc.boolean(),
        async ({ method, path }, places, query, body, type, inPlace) => {
          let at = 0;
          const url = path.replace(/:(\w+)/g, (_, name: string) =>
            // Most requests should reach the job, not stop at an id that names none.
            name === 'id' && places[3]!.length % 4 > 0 ? id : encode(places[at++ % 3]!),
          );
          const deletes = method === 'POST' && path === '/jobs/:id/delete';
          const started = performance.now();
          const answer = await app.inject({
            method: method as 'GET',
            url: `${deletes ? url.replace(id, 'none') : url}?${pairs(query)}`,
            headers: { 'content-type': type, ...(inPlace ? { 'hx-request': 'true' } : {}) },
            ...(method === 'GET' || method === 'HEAD'
              ? {}
              : { payload: type.includes('json') ? JSON.stringify(body) : pairs(body) }),
          });
          expect(answer.statusCode, `${method} ${url}: ${answer.body.slice(0, 200)}`).toBeLessThan(500);
          expect(performance.now() - started, `${method} ${path}`).toBeLessThan(longest);
          if (++asked % Math.ceil(requests / 4) === 0) heap.push(process.memoryUsage().heapUsed);
        },
      ),
      { numRuns: requests, seed },
    );
    // The whole amount grows no heap between its second and its last quarter that a collection has not taken back.
    if (whole) expect(heap.at(-1)! / heap[1]!).toBeLessThan(1.5);
  });
});

function encode(text: string): string {
  return encodeURIComponent(text) || 'x';
}

function pairs(fields: Record<string, string>): string {
  return Object.entries(fields)
    .map(([name, value]) => `${encode(name)}=${encode(value)}`)
    .join('&');
}
