import type { FastifyInstance } from 'fastify';
import { readAddress } from '../../views/job-address.ts';
import { DeleteJobPage } from '../../views/pages/delete-job-page.tsx';
import { type JobListRow, JobsPage } from '../../views/pages/jobs-page.tsx';
import type { Problems } from '../../views/workbench.ts';
import { readJob } from '../document/read-job.ts';
import { writeJob } from '../document/write-job.ts';
import { formFields } from '../forms/form-fields.ts';
import { newJobForm } from '../forms/job-form.ts';
import { readForm } from '../forms/read-form.ts';
import { sendHtml } from '../http/html.ts';
import { noSuchJob } from '../http/refusal.ts';
import { safeFileName } from '../http/safe-file-name.ts';
import { putInBin } from '../storage/bin-store.ts';
import { createJob, type JobSummary, lastOpenedJob, listJobs, readJobRow } from '../storage/job-store.ts';
import { computeJob } from '../workbench/compute-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { readUpload } from './read-upload.ts';

/** The list of jobs: opening, making, uploading, downloading and deleting them. */
export function registerJobs(app: FastifyInstance, context: AppContext): void {
  const { store, jobs, starts, now } = context;

  async function listPage(problems: Problems = {}): Promise<string> {
    const rows: JobListRow[] = [];
    for (const summary of await listJobs(store)) rows.push(await listRow(context, summary));
    return await (<JobsPage jobs={rows} starts={starts} problems={problems} />);
  }

  /** The file of a job, which need not compute, of an earlier revision, or of a trial. */
  async function fileAt(id: string): Promise<{ readonly name: string; readonly document: string }> {
    if (readAddress(id).at !== 'job') {
      const { job, revision, document } = await openOrRefuse(context, id);
      return { name: `${job.name} ${revision}`, document };
    }
    const row = await readJobRow(store, id);
    if (row === undefined) throw noSuchJob();
    return row;
  }

  app.get('/', async (_request, reply) => {
    const last = await lastOpenedJob(store);
    return reply.redirect(last === undefined ? '/jobs' : `/jobs/${last}`, 303);
  });

  app.get('/jobs', async (_request, reply) => sendHtml(reply, await listPage()));

  app.post('/jobs', async (request, reply) => {
    const form = readForm(newJobForm(starts.map(({ key }) => key)), formFields(request.body));
    if (!form.ok) return sendHtml(reply, await listPage(form.problems), 422);
    const start = starts.find(({ key }) => key === form.value.start);
    const read = start === undefined ? undefined : await readJob(start.document);
    if (read?.ok !== true)
      return sendHtml(reply, await listPage({ name: 'This starting job cannot be read.' }), 422);
    const id = await createJob(
      store,
      form.value.name,
      writeJob({ ...read.job, name: form.value.name }),
      now(),
    );
    return reply.redirect(`/jobs/${id}`, 303);
  });

  app.post('/jobs/upload', async (request, reply) => {
    const file = await readUpload(request);
    if (!file.ok) return sendHtml(reply, await listPage({ file: file.problem }), file.status);
    const read = await readJob(file.bytes);
    if (!read.ok)
      return sendHtml(reply, await listPage({ file: sentences('This file is no job', read.problems) }), 422);
    const computed = computeJob(read.job);
    if (!computed.ok) {
      return sendHtml(
        reply,
        await listPage({ file: sentences('This job makes no tree', computed.sentences) }),
        422,
      );
    }
    const id = await createJob(store, read.job.name, writeJob(read.job), now());
    return reply.redirect(`/jobs/${id}`, 303);
  });

  app.get<{ Params: { id: string } }>('/jobs/:id/file', async (request, reply) => {
    const { name, document } = await fileAt(request.params.id);
    return reply
      .type('application/json; charset=utf-8')
      .header('content-disposition', `attachment; filename="${safeFileName(name, '.hightap.json')}"`)
      .header('cache-control', 'no-store')
      .send(document);
  });

  app.get<{ Params: { id: string } }>('/jobs/:id/delete', async (request, reply) => {
    const row = await readJobRow(store, request.params.id);
    if (row === undefined) throw noSuchJob();
    return sendHtml(reply, await (<DeleteJobPage id={row.id} name={row.name} />));
  });

  app.post<{ Params: { id: string } }>('/jobs/:id/delete', async (request, reply) => {
    const { id } = request.params;
    if (!(await putInBin(store, 'job', id, now()))) throw noSuchJob();
    jobs.forget(id);
    return reply.redirect('/jobs', 303);
  });
}

function sentences(head: string, problems: readonly string[]): string {
  return `${head}, and nothing was kept: ${problems.join('; ')}`.replace(/[.]?$/, '.');
}

async function listRow({ jobs }: AppContext, { id, name }: JobSummary): Promise<JobListRow> {
  const opened = await jobs.open(id);
  if (!opened.ok) return { id, name, answer: { problem: 'does not compute; download its file to mend it' } };
  const { job, report } = opened.open;
  const { worst } = report;
  if (worst === undefined) return { id, name, answer: { problem: 'serves no fixture yet' } };
  const { inlet, residual, margin } = worst;
  return {
    id,
    name,
    answer: {
      system: job.units,
      worst: `${inlet.fixture.name}, ${inlet.side}`,
      residual,
      margin,
      passes: report.passes,
    },
  };
}
