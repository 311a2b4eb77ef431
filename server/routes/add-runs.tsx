import type { FastifyInstance } from 'fastify';
import { AddRunsPage } from '../../views/pages/add-runs-page.tsx';
import type { Problems } from '../../views/workbench.ts';
import { pasteRuns, readPastedRuns } from '../edits/paste-runs.ts';
import { type FormFields, formFields } from '../forms/form-fields.ts';
import { sendHtml } from '../http/html.ts';
import { computeJob } from '../workbench/compute-job.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { changeJob } from './change-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';

/** What keeps the pasted runs from being added to a job. */
function problemsOf({ job }: OpenJob, { from = '', lines = '' }: FormFields): Problems {
  const edited = pasteRuns(job, from.trim(), lines);
  if (!edited.ok) return edited.problems;
  const computed = computeJob(edited.job);
  return computed.ok ? {} : { '': computed.sentences.join(' ') };
}

/** Many runs at once: lines are looked at first, and added all or none. */
export function registerAddRuns(app: FastifyInstance, context: AppContext): void {
  const page = async (open: OpenJob, fields: FormFields, problems: Problems): Promise<string> => {
    const { id, revision, job } = open;
    const pasted = readPastedRuns(job, (fields.from ?? '').trim(), fields.lines ?? '');
    const asked = { values: { from: fields.from ?? '', lines: fields.lines ?? '' }, problems };
    return await (<AddRunsPage id={id} revision={revision} job={job} asked={asked} pasted={pasted} />);
  };

  app.get<{ Params: { id: string } }>('/jobs/:id/add-runs', async (request, reply) => {
    const open = await openOrRefuse(context, request.params.id);
    return sendHtml(reply, await page(open, {}, {}));
  });

  app.post<{ Params: { id: string } }>('/jobs/:id/add-runs', async (request, reply) => {
    const { id } = request.params;
    const fields = formFields(request.body);
    if (fields.step !== 'add') {
      const open = await openOrRefuse(context, id);
      const problems = problemsOf(open, fields);
      return sendHtml(
        reply,
        await page(open, fields, problems),
        Object.keys(problems).length === 0 ? 200 : 422,
      );
    }
    const { from = '', lines = '' } = fields;
    const saved = await changeJob(context, id, fields, ({ job }) => pasteRuns(job, from.trim(), lines));
    if (saved.ok) return reply.redirect(`/jobs/${encodeURIComponent(id)}#layout`, 303);
    const open = await openOrRefuse(context, id);
    const clash = saved.why === 'clash';
    const problems = clash ? { '': saved.text } : saved.problems;
    return sendHtml(reply, await page(open, fields, problems), clash ? 409 : 422);
  });
}
