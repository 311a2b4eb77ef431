import type { FastifyInstance } from 'fastify';
import { QuickStartPage } from '../../views/pages/quick-start-page.tsx';
import type { Refused } from '../../views/workbench.ts';
import { writeJob } from '../document/write-job.ts';
import { formFields } from '../forms/form-fields.ts';
import { readQuickStartForm } from '../forms/quick-start-form.ts';
import { sendHtml } from '../http/html.ts';
import { startJob } from '../schemes/start-job.ts';
import { createJob } from '../storage/job-store.ts';
import { computeJob } from '../workbench/compute-job.ts';
import type { AppContext } from './context.ts';

/** A new job from a few questions about the house. */
export function registerQuickStart(app: FastifyInstance, { store, books, now }: AppContext): void {
  const page = async (refused?: Refused): Promise<string> => await (<QuickStartPage refused={refused} />);

  app.get('/quick-start', async (_request, reply) => sendHtml(reply, await page()));

  app.post('/quick-start', async (request, reply) => {
    const fields = formFields(request.body);
    const form = readQuickStartForm(fields);
    if (!form.ok) return sendHtml(reply, await page({ values: fields, problems: form.problems }), 422);
    const job = await startJob(form.value, await books.shipped());
    const computed = computeJob(job);
    if (!computed.ok) {
      const problems = { '': `These answers make no house: ${computed.sentences.join(' ')}` };
      return sendHtml(reply, await page({ values: fields, problems }), 422);
    }
    const id = await createJob(store, job.name, writeJob(job), now());
    return reply.redirect(`/jobs/${id}/compare`, 303);
  });
}
