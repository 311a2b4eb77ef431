import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildApp } from '../../server/app.tsx';
import { openStore, type Store } from '../../server/storage/database.ts';
import { createJob, readJobRow } from '../../server/storage/job-store.ts';
import { listRevisions, readRevision } from '../../server/storage/revision-store.ts';
import { smallDocument } from '../server/small-job.ts';
import { noon } from '../server/test-app.ts';
import { type Cluster, makeCluster } from './cluster.ts';

let cluster: Cluster;
let store: Store;
let app: FastifyInstance;
let id: string;

beforeAll(async () => {
  cluster = await makeCluster();
  store = await openStore(cluster.address);
  id = await createJob(store, 'Small', smallDocument, noon);
  app = await buildApp({ store, now: () => noon });
});

afterAll(async () => {
  await app.close();
  await store.destroy();
  await cluster.remove();
});

const post = (note: string) =>
  app.inject({
    method: 'POST',
    url: `/jobs/${id}/job`,
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    payload: new URLSearchParams({ name: 'Small', chosen: 'S1', note }).toString(),
  });

describe('a database that goes away and comes back', () => {
  it('is told in words with when to try again, and found again without a restart', async () => {
    expect((await post('before')).statusCode).toBe(303);
    await cluster.stop('fast');
    for (const answer of [await app.inject(`/jobs/${id}`), await post('meanwhile')]) {
      expect(answer.statusCode).toBe(503);
      expect(answer.headers['retry-after']).toBe('5');
      expect(answer.body).toContain('The store of jobs does not answer. Nothing that was kept is lost.');
    }
    await cluster.start();
    const back = await app.inject(`/jobs/${id}`);
    expect(back.statusCode).toBe(200);
    expect(back.body).toContain('before');
    expect((await post('after')).statusCode).toBe(303);
    expect((await readJobRow(store, id))?.document).toContain('"after"');
  });

  it('loses no acknowledged save where it is cut off in the midst of saves, four times', async () => {
    const acknowledged: string[] = [];
    let stopping = false;
    let count = 0;
    const writer = async () => {
      while (!stopping) {
        const note = `save ${count++}`;
        const { statusCode } = await post(note);
        expect([303, 409, 503]).toContain(statusCode);
        if (statusCode === 303) acknowledged.push(note);
      }
    };
    const writing = Promise.all([writer(), writer(), writer()]);
    for (let times = 0; times < 4; times++) {
      await new Promise((resolve) => setTimeout(resolve, 400 + 130 * times));
      await cluster.stop('immediate');
      await cluster.start();
    }
    stopping = true;
    await writing;
    const kept = new Set<string>();
    for (const { number } of await listRevisions(store, id)) {
      const revision = await readRevision(store, id, number);
      const note = /save \d+/.exec(revision?.document ?? '')?.[0];
      if (note !== undefined) kept.add(note);
    }
    expect(acknowledged.length).toBeGreaterThan(4);
    for (const note of acknowledged) expect(kept).toContain(note);
  });
});
