import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJob } from '../../server/document/read-job.ts';
import { routesOf } from '../../server/http/route-list.ts';
import { computeJob } from '../../server/workbench/compute-job.ts';
import { smallDocument } from './small-job.ts';
import { testApp } from './test-app.ts';

/** The whole amount by `npm run test:fuzz`; a share of it with every other test. */
const whole = process.env.FUZZ === 'whole';
const files = whole ? 100_000 : 500;
const requests = whole ? 20_000 : 200;
const seed = 20_261_125;
/** Milliseconds of this process's own work, which a busy machine does not lengthen: nothing may hold others up longer. */
const longest = 1000;
/** The whole amount leaves no more than this behind, in bytes, from its second tenth to its last. */
const growth = 32 * 1024 * 1024;

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
    const heap = heapAtTenths(files);
    await fc.assert(
      fc.asyncProperty(fc.oneof(mutated, changedValue), async (text) => {
        const started = process.cpuUsage();
        const job = await readJob(text);
        if (job.ok) {
          read++;
          computeJob(job.job);
        } else {
          expect(job.problems.join('')).not.toBe('');
        }
        expect(milliseconds(started), text).toBeLessThan(longest);
        heap.count();
      }),
      { numRuns: files, seed, endOnFailure: true },
    );
    // A mutation that is always refused at the door would try nothing behind it.
    expect(read).toBeGreaterThan(files / 100);
    if (whole) expect(heap.grown()).toBeLessThan(growth);
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
    // What is loaded and compiled at the first call of a route is not what a client can make long.
    for (const { method, path } of routes)
      await app.inject({ method: method as 'GET', url: aimed(path, () => id).replace(/delete$/, 'none') });
    const heap = heapAtTenths(requests);
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
          // Most requests should reach the job, not stop at an id that names none.
          const reach = places[3]!.length % 4 > 0;
          const url = aimed(path, (name) => (name === 'id' && reach ? id : encode(places[at++ % 3]!)));
          const deletes = method === 'POST' && path === '/jobs/:id/delete';
          const started = process.cpuUsage();
          const answer = await app.inject({
            method: method as 'GET',
            url: `${deletes ? url.replace(id, 'none') : url}?${pairs(query)}`,
            headers: { 'content-type': type, ...(inPlace ? { 'hx-request': 'true' } : {}) },
            ...(method === 'GET' || method === 'HEAD'
              ? {}
              : { payload: type.includes('json') ? JSON.stringify(body) : pairs(body) }),
          });
          expect(answer.statusCode, `${method} ${url}: ${answer.body.slice(0, 200)}`).toBeLessThan(500);
          expect(milliseconds(started), `${method} ${path}`).toBeLessThan(longest);
          heap.count();
        },
      ),
      { numRuns: requests, seed, endOnFailure: true },
    );
    if (whole) expect(heap.grown()).toBeLessThan(growth);
  });
});

/** A route's address with each of its places filled. */
function aimed(path: string, fill: (name: string) => string): string {
  return path.replace(/:(\w+)(\([^)]*\))?/g, (_, name: string) => fill(name));
}

function milliseconds(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
}

/** The heap after a collection at each tenth of `total` calls of `count`; `grown` from the second of them to the last. */
function heapAtTenths(total: number) {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const heap: number[] = [];
  let seen = 0;
  return {
    count() {
      if (++seen % (total / 10) !== 0) return;
      collect();
      heap.push(process.memoryUsage().heapUsed);
      if (whole) console.log(`${seen} of ${total}, heap ${(heap.at(-1)! / 1e6).toFixed(1)} MB`);
    },
    grown: () => heap.at(-1)! - heap[1]!,
  };
}

function encode(text: string): string {
  return encodeURIComponent(text) || 'x';
}

function pairs(fields: Record<string, string>): string {
  return Object.entries(fields)
    .map(([name, value]) => `${encode(name)}=${encode(value)}`)
    .join('&');
}
