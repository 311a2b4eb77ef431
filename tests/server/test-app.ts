import type { FastifyInstance, LightMyRequestResponse } from 'fastify';
import { buildApp } from '../../server/app.tsx';
import type { Store } from '../../server/storage/database.ts';
import { createJob, readJobRow } from '../../server/storage/job-store.ts';
import { smallDocument, smallJob } from './small-job.ts';
import { testStore } from './storage/test-store.ts';

export interface TestApp {
  readonly app: FastifyInstance;
  readonly store: Store;
  /** Id of the one job in the store. */
  readonly id: string;
  readonly post: (
    path: string,
    fields: Record<string, string>,
    headers?: Record<string, string>,
  ) => Promise<LightMyRequestResponse>;
  /** The same with what htmx adds. */
  readonly postInPlace: (path: string, fields: Record<string, string>) => Promise<LightMyRequestResponse>;
  readonly document: () => Promise<string>;
}

export const noon: Date = new Date('2026-11-25T12:00:00Z');

/** The app over a store in memory that holds one small job. */
export async function testApp(document: string = smallDocument): Promise<TestApp> {
  const store = await testStore();
  const id = await createJob(store, smallJob.name, document, noon);
  const app = await buildApp({
    store,
    now: () => noon,
    starts: [{ key: 'small', name: 'Small', document: smallDocument }],
  });
  const post: TestApp['post'] = (path, fields, headers = {}) =>
    app.inject({
      method: 'POST',
      url: path,
      headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
      payload: new URLSearchParams(fields).toString(),
    });
  return {
    app,
    store,
    id,
    post,
    postInPlace: (path, fields) => post(path, fields, { 'hx-request': 'true' }),
    document: async () => (await readJobRow(store, id))?.document ?? '',
  };
}

/** Ids of the pieces that an answer swaps in. */
export function swapped(body: string): string[] {
  return [...body.matchAll(/hx-swap-oob="true" id="([^"]+)"/g)].map((match) => match[1] ?? '');
}
