import { buildApp } from '../../server/app.tsx';
import { readJob } from '../../server/document/read-job.ts';
import { writeJob } from '../../server/document/write-job.ts';
import { openStore } from '../../server/storage/database.ts';
import { createJob } from '../../server/storage/job-store.ts';
import { figure, median } from './figure.ts';
import { treeJob } from './tree-job.ts';

const start = new Date('2026-11-25T12:00:00Z');

/**
 * A form edit on a 100-run job over a real connection: a run of the trunk is made larger and smaller by turns, so
 * that the figures of many rows change; against a route of the same server that returns the same bytes.
 */
export async function benchEdit(short: boolean): Promise<void> {
  const document = writeJob(treeJob(100));
  const read = await readJob(document);
  if (!read.ok) throw new Error(read.problems.join('; '));
  const store = await openStore(':memory:');
  const id = await createJob(store, 'Invented tree', document, start);
  const app = await buildApp({ store, now: () => start });
  let answer = '';
  app.post('/bench/bare', (_request, reply) => reply.type('text/html; charset=utf-8').send(answer));
  const address = await app.listen({ host: '127.0.0.1', port: 0 });

  const post = async (path: string, fields: Record<string, string>): Promise<string> => {
    const response = await fetch(`${address}${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', 'hx-request': 'true' },
      body: new URLSearchParams(fields).toString(),
    });
    const body = await response.text();
    if (response.status !== 200)
      throw new Error(`${path} answered ${response.status}: ${body.slice(0, 300)}`);
    return body;
  };
  const timed = async (work: () => Promise<unknown>): Promise<number> => {
    const begin = performance.now();
    await work();
    return performance.now() - begin;
  };

  const edits: number[] = [];
  const bare: number[] = [];
  const rounds = short ? 40 : 200;
  for (let round = 0; round < rounds + 20; round++) {
    const line = `${round % 2 === 0 ? '1-1/2' : '2'} PEX 20' 2 ells 1 through tee`;
    const edit = await timed(async () => {
      answer = await post(`/jobs/${id}/runs/R1/line`, { line });
    });
    const same = await timed(() => post('/bench/bare', { line }));
    if (round < 20) continue;
    edits.push(edit);
    bare.push(same);
  }
  await app.close();
  await store.destroy();
  figure('edit_median_ms', median(edits), 'ms');
  figure('edit_vs_bare_route', median(edits) / median(bare), 'ratio');
  figure('edit_answer_bytes', answer.length, 'bytes');
}
