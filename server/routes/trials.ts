import type { FastifyInstance } from 'fastify';
import { addressBeside, jobOfAddress, readAddress } from '../../views/job-address.ts';
import { sendHtml } from '../http/html.ts';
import { noSuchJob, Refusal } from '../http/refusal.ts';
import { dropTrial, readTrial, startTrial } from '../storage/trial-store.ts';
import { keepTried, type OpenTrial } from '../workbench/keep-trial.ts';
import { problemText, renderPage } from '../workbench/render-page.tsx';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { pageAddress } from './page-address.ts';

type Asked = { Params: { id: string } };

/** Trying changes without saving them: a trial is started, kept or dropped; its pages are the job's own. */
export function registerTrials(app: FastifyInstance, context: AppContext): void {
  const { store, jobs, now } = context;

  async function trialAt(id: string): Promise<OpenTrial> {
    const address = readAddress(id);
    const row = address.at === 'trial' ? await readTrial(store, address.trial) : undefined;
    if (row?.job !== address.job) {
      throw new Refusal(404, 'No such trial', 'There is no trial at this address. It was kept or dropped.');
    }
    return { trial: row.id, job: row.job, base: row.base, open: await openOrRefuse(context, id) };
  }

  app.post<Asked>('/jobs/:id/try', async (request, reply) => {
    const { id, revision } = await openOrRefuse(context, request.params.id);
    if (readAddress(id).at === 'trial') return reply.redirect(pageAddress(id, '', 'main'), 303);
    const job = jobOfAddress(id);
    const trial = await startTrial(store, job, revision, now());
    if (trial === undefined) throw noSuchJob();
    return reply.redirect(pageAddress(addressBeside(job, trial), '', 'main'), 303);
  });

  app.post<Asked>('/jobs/:id/keep', async (request, reply) => {
    const trial = await trialAt(request.params.id);
    const saved = await keepTried({ store, jobs, time: now() }, trial);
    if (saved === undefined) throw noSuchJob();
    if (saved.ok) {
      if (saved.merged !== '') return sendHtml(reply, renderPage(saved.open, '', saved.merged));
      return reply.redirect(pageAddress(trial.job, '', 'main', 'keep'), 303);
    }
    const clash = saved.why === 'clash';
    const text = clash ? saved.text : problemText(saved.problems);
    return sendHtml(reply, renderPage(trial.open, '', text), clash ? 409 : 422);
  });

  app.post<Asked>('/jobs/:id/drop', async (request, reply) => {
    const { trial, job } = await trialAt(request.params.id);
    await dropTrial(store, trial);
    return reply.redirect(pageAddress(job, '', 'main', 'drop'), 303);
  });
}
