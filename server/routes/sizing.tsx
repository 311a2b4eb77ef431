import type { FastifyInstance } from 'fastify';
import { SizingPage } from '../../views/pages/sizing-page.tsx';
import type { SizingQuestion, SizingView } from '../../views/sizing.ts';
import { unsizedText } from '../../views/text/unsized-text.ts';
import { chosenScheme, refused } from '../edits/edited.ts';
import { copyScheme, replaceSchemeRuns } from '../edits/scheme-edits.ts';
import { type FormFields, formFields } from '../forms/form-fields.ts';
import { readForm } from '../forms/read-form.ts';
import { sizeAsForm } from '../forms/scheme-forms.ts';
import { readSizingForm } from '../forms/sizing-form.ts';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { mostSizedRuns } from '../schemes/cost-of-spare.ts';
import { tooManyRuns } from '../schemes/size-at-least-cost.ts';
import { sizeJob } from '../schemes/size-job.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { changeJob } from './change-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

const noQuestion: SizingQuestion = { keep: [], trunks: [], notLarger: false, materials: [] };

/** Least-cost sizing of the chosen scheme: the question, the answer, and the sizes put to use. */
export function registerSizing(app: FastifyInstance, context: AppContext): void {
  async function view(open: OpenJob, fields: FormFields): Promise<{ view: SizingView; status: number }> {
    const { id, revision, job, report } = open;
    refuseTooLarge(open);
    const scheme = chosenScheme(job);
    const prices = await context.prices(id);
    const base = { id, revision, job, scheme, report, book: prices.book };
    const form = readSizingForm(fields, scheme);
    if (!form.ok) {
      const view = {
        ...base,
        question: noQuestion,
        refused: { values: fields, problems: form.problems },
        found: undefined,
      };
      return { view, status: 422 };
    }
    const found = await sizeJob(report, form.value, prices);
    return { view: { ...base, question: form.value, found }, status: 200 };
  }

  app.get<{ Params: { id: string }; Querystring: Query }>('/jobs/:id/sizing', async (request, reply) => {
    const open = await openOrRefuse(context, request.params.id);
    const asked = await view(open, queryFields(request.query));
    return sendHtml(reply, await (<SizingPage view={asked.view} notice="" />), asked.status);
  });

  app.post<{ Params: { id: string } }>('/jobs/:id/sizing', async (request, reply) => {
    const { id } = request.params;
    const fields = formFields(request.body);
    const prices = await context.prices(id);
    const saved = await changeJob(context, id, fields, async (open) => {
      const { job, report } = open;
      refuseTooLarge(open);
      const scheme = chosenScheme(job);
      const to = readForm(sizeAsForm, fields);
      if (!to.ok) return to;
      const form = readSizingForm(fields, scheme);
      if (!form.ok) return form;
      const { least, unsized, missing } = await sizeJob(report, form.value, prices);
      if (least === undefined) {
        return refused({ '': unsized === undefined ? '' : unsizedText(unsized, missing, job.units) });
      }
      return to.value.as === 'copy'
        ? copyScheme(job, job.chosen, 'sized at least cost', least.scheme.runs)
        : replaceSchemeRuns(job, job.chosen, least.scheme.runs);
    });
    if (saved.ok) {
      const to =
        fields.as === 'copy' ? 'compare#schemes' : `sizing?${new URLSearchParams(asQuery(fields))}#answer`;
      return reply.redirect(`/jobs/${encodeURIComponent(id)}/${to}`, 303);
    }
    const current = await openOrRefuse(context, id);
    const again = await view(current, asQuery(fields));
    const notice =
      saved.why === 'clash' ? saved.text : `Nothing was changed. ${Object.values(saved.problems).join(' ')}`;
    const status = saved.why === 'clash' ? 409 : 422;
    return sendHtml(reply, await (<SizingPage view={again.view} notice={notice} />), status);
  });
}

function refuseTooLarge({ report }: OpenJob): void {
  const { size } = report.network;
  if (size > mostSizedRuns) throw new Refusal(413, 'Too large to size here', tooManyRuns(size));
}

const questionFields = ['keep', 'trunk', 'notLarger', 'material'] as const;

function queryFields(query: Query): FormFields {
  return asQuery(Object.fromEntries(Object.entries(query).map(([name, value]) => [name, queryText(value)])));
}

/** The fields of the question that say something. */
function asQuery(fields: FormFields): Record<string, string> {
  return Object.fromEntries(
    questionFields.flatMap((name) => {
      const value = fields[name] ?? '';
      return value === '' ? [] : [[name, value]];
    }),
  );
}
