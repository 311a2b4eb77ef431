import { Validator } from '@seriousme/openapi-schema-validator';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { routesOf } from '../../../server/http/route-list.ts';
import { type TestApp, testApp } from '../test-app.ts';

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
});
