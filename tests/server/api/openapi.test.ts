import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { Validator } from '@seriousme/openapi-schema-validator';
import openapiTS, { astToString } from 'openapi-typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { routesOf } from '../../../server/http/route-list.ts';
import { type TestApp, testApp } from '../test-app.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const runFile = promisify(execFile);

interface Described {
  [field: string]: unknown;
  openapi: string;
  paths: Record<string, Record<string, { operationId: string }>>;
  components: { schemas: Record<string, object> };
}

let bench: TestApp;
let described: Described;

beforeAll(async () => {
  bench = await testApp();
  described = (await bench.app.inject('/api/openapi.json')).json();
});
afterAll(() => bench.app.close());

describe('the OpenAPI document', () => {
  it('is valid OpenAPI 3.1, and every reference leads somewhere', async () => {
    const validator = new Validator();
    const { valid, errors } = await validator.validate({ ...described });
    expect(errors ?? []).toEqual([]);
    expect(valid).toBe(true);
    expect(validator.version).toBe('3.1');
    const names = Object.keys(described.components.schemas).map((name) => `#/components/schemas/${name}`);
    const references = [...JSON.stringify(described).matchAll(/"\$ref":"([^"]+)"/g)].map(([, to]) => to);
    expect(references.length).toBeGreaterThan(20);
    expect(references.filter((to) => !names.includes(to!))).toEqual([]);
  });

  it('describes every route under /api, and no other', () => {
    const registered = routesOf(bench.app)
      .filter(({ method, path }) => path.startsWith('/api/') && method !== 'HEAD')
      .map(({ method, path }) => `${method} ${path}`)
      .filter((route) => route !== 'GET /api/openapi.json');
    const told = Object.entries(described.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path.replace('{id}', ':id')}`),
    );
    expect(told.length).toBeGreaterThanOrEqual(10);
    expect(told.sort()).toEqual(registered.sort());
  });

  it('makes a client that type-checks and runs the main job', { timeout: 60_000 }, async () => {
    const folder = mkdtempSync(join(root, 'node_modules', '.client-'));
    try {
      const types = astToString(await openapiTS(JSON.stringify(described)));
      writeFileSync(join(folder, 'described.ts'), types);
      writeFileSync(join(folder, 'client.mts'), clientProgram);
      const options = [
        '--noEmit',
        '--strict',
        '--skipLibCheck',
        '--module',
        'nodenext',
        '--target',
        'es2023',
        '--allowImportingTsExtensions',
      ];
      await runFile(join(root, 'node_modules/.bin/tsc'), [...options, join(folder, 'client.mts')], {
        cwd: root,
      });
      const address = await bench.app.listen({ host: '127.0.0.1', port: 0 });
      const { stdout } = await runFile(
        process.execPath,
        ['--import', 'tsx', join(folder, 'client.mts'), address],
        { cwd: root },
      );
      expect(JSON.parse(stdout)).toEqual({
        worst: 'RAIN.hot',
        short: 0,
        holds: true,
        fits: true,
        revision: 1,
      });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

/** The main job by a client that knows nothing but the description: what is left, what breaks, sizes, keeping it. */
const clientProgram = `
import { readFileSync } from 'node:fs';
import createClient from 'openapi-fetch';
import type { paths, components } from './described.ts';

const client = createClient<paths>({ baseUrl: process.argv[2]! });
const job = JSON.parse(readFileSync('examples/three-level-house.json', 'utf8')) as components['schemas']['Job'];
function had<T>({ data, error }: { data?: T; error?: unknown }): T {
  if (data === undefined) throw new Error(JSON.stringify(error));
  return data;
}
const pressure = had(await client.POST('/api/pressure', { body: { job } }));
const check = had(await client.POST('/api/check', { body: { job } }));
const size = had(await client.POST('/api/size', { body: { job, notLarger: true } }));
const kept = had(await client.POST('/api/jobs', { body: job }));
console.log(JSON.stringify({
  worst: pressure.worst === null ? '' : pressure.worst.fixture + '.' + pressure.worst.side,
  short: check.counts.error,
  holds: (size.least?.worst?.margin_Pa ?? -1) >= 0,
  fits: size.fits,
  revision: kept.revision,
}));
`;
