import type { FastifyInstance } from 'fastify';
import { addressBeside, jobOfAddress } from '../../views/job-address.ts';
import { HistoryPage } from '../../views/pages/history-page.tsx';
import { changed } from '../edits/edited.ts';
import { formFields } from '../forms/form-fields.ts';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { safeFileName } from '../http/safe-file-name.ts';
import { listRevisions, nameRevision, readSummary } from '../storage/revision-store.ts';
import { listTrials } from '../storage/trial-store.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { changeJob } from './change-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { queryText } from './query-text.ts';

const rowsOnPage = 50;

type Place = { Params: { id: string; number: string } };

/** The revisions of a job: listed, named, downloaded, and gone back to, which makes a new revision. */
export function registerHistory(app: FastifyInstance, context: AppContext): void {
  const { store } = context;

  async function revisionAt({ id, number }: Place['Params']): Promise<OpenJob> {
    const job = jobOfAddress(id);
    const summary = /^[1-9]\d{0,8}$/.test(number) ? await readSummary(store, job, Number(number)) : undefined;
    if (summary === undefined || summary.trial !== null) {
      throw new Refusal(404, 'No such revision', 'This job has no revision of that number.');
    }
    return await openOrRefuse(context, addressBeside(job, summary.number));
  }

  app.get<{ Params: { id: string }; Querystring: { before?: string | string[] } }>(
    '/jobs/:id/history',
    async (request, reply) => {
      // The history is the job's own; its page leads on to where its reader is.
      const { id: address } = await openOrRefuse(context, request.params.id);
      const id = jobOfAddress(address);
      const open = await openOrRefuse(context, id);
      const before = Number(queryText(request.query.before)) || Number.POSITIVE_INFINITY;
      const revisions = (await listRevisions(store, id)).filter(({ number }) => number < before);
      const rows = revisions.slice(0, rowsOnPage).map(({ number, saved_at, change, name, parent }) => ({
        number,
        savedAt: saved_at,
        change: change ?? (parent === null ? 'As it was first kept' : ''),
        name: name ?? '',
        shown: number === open.revision,
      }));
      const older = revisions.length > rowsOnPage ? rows.at(-1)?.number : undefined;
      const trials = (await listTrials(store, id)).map((trial) => ({
        address: addressBeside(id, trial.id),
        startedAt: trial.started_at,
        base: trial.base,
      }));
      const view = { id, address, jobName: open.job.name, revision: open.revision, rows, older, trials };
      return sendHtml(reply, await (<HistoryPage {...view} />));
    },
  );

  app.post<Place>('/jobs/:id/history/:number/name', async (request, reply) => {
    const { revision } = await revisionAt(request.params);
    const job = jobOfAddress(request.params.id);
    const name = (formFields(request.body).name ?? '').trim().slice(0, 100);
    await nameRevision(store, job, revision, name === '' ? null : name);
    return reply.redirect(`/jobs/${encodeURIComponent(job)}/history`, 303);
  });

  app.post<Place>('/jobs/:id/history/:number/back', async (request, reply) => {
    const { job } = await revisionAt(request.params);
    const id = jobOfAddress(request.params.id);
    const now = await openOrRefuse(context, id);
    const seen = formFields(request.body).revision;
    if (seen !== undefined && seen !== String(now.revision)) {
      throw new Refusal(409, 'Not gone back', 'This job was changed elsewhere since this page was loaded.');
    }
    const saved = await changeJob(context, id, { revision: String(now.revision) }, () => changed(job));
    if (saved.ok) return reply.redirect(`/jobs/${encodeURIComponent(id)}/history`, 303);
    const text = saved.why === 'clash' ? saved.text : Object.values(saved.problems).join(' ');
    throw new Refusal(409, 'Not gone back', text);
  });

  app.get<Place>('/jobs/:id/history/:number/file', async (request, reply) => {
    const { document, job, revision } = await revisionAt(request.params);
    const file = safeFileName(`${job.name} ${revision}`, '.hightap.json');
    return reply
      .type('application/json; charset=utf-8')
      .header('content-disposition', `attachment; filename="${file}"`)
      .header('cache-control', 'no-store')
      .send(document);
  });
}
