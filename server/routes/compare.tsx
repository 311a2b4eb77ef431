import type { FastifyInstance, FastifyReply } from 'fastify';
import { layOut, type PriceIndex } from '../../engine/index.ts';
import { ComparePage } from '../../views/pages/compare-page.tsx';
import { missingText } from '../../views/text/missing-text.ts';
import type { Refused } from '../../views/workbench.ts';
import { type Edited, present, refused } from '../edits/edited.ts';
import {
  addScheme,
  chooseScheme,
  copyScheme,
  freeSchemeId,
  freeSchemeName,
  removeScheme,
  replaceSchemeRuns,
} from '../edits/scheme-edits.ts';
import { type FormFields, formFields } from '../forms/form-fields.ts';
import { readForm } from '../forms/read-form.ts';
import { splitIds } from '../forms/run-ids.ts';
import { drawUpForm, sizeAsForm } from '../forms/scheme-forms.ts';
import { sendHtml } from '../http/html.ts';
import { compareJob } from '../schemes/compare-job.ts';
import { sizeAtLeastCost } from '../schemes/size-at-least-cost.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { changeJob } from './change-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

interface SchemePlace {
  readonly id: string;
  readonly scheme: string;
}

type SchemeEdit = (
  open: OpenJob,
  scheme: string,
  fields: FormFields,
  prices: PriceIndex,
) => Edited | Promise<Edited>;

/** What the buttons of one scheme do, by the last word of their address. */
export const schemeEdits: { readonly [verb: string]: SchemeEdit } = {
  choose: ({ job }, scheme) => chooseScheme(job, scheme),
  copy: ({ job }, scheme) => copyScheme(job, scheme, 'copy'),
  remove: ({ job }, scheme) => removeScheme(job, scheme),
  size: async ({ job }, scheme, fields, prices) => {
    const form = readForm(sizeAsForm, fields);
    if (!form.ok) return refused({ '': Object.values(form.problems).join(' ') });
    const sized = sizeAtLeastCost(job, scheme, prices);
    if (!sized.ok) return refused({ '': sized.sentence });
    const { runs } = sized.scheme;
    return form.value.as === 'copy'
      ? copyScheme(job, scheme, 'sized at least cost', runs)
      : replaceSchemeRuns(job, scheme, runs);
  },
};

/** The page of schemes side by side: choosing, copying, removing, sizing and drawing up schemes. */
export function registerCompare(app: FastifyInstance, context: AppContext): void {
  async function page(id: string, asked: string, notice = '', form?: Refused): Promise<string> {
    const open = await openOrRefuse(context, id);
    const comparison = await compareJob(open, await context.prices(id), splitIds(asked));
    return await (<ComparePage comparison={comparison} notice={notice} refused={form} />);
  }

  app.get<{ Params: { id: string }; Querystring: Query }>('/jobs/:id/compare', async (request, reply) =>
    sendHtml(reply, await page(request.params.id, queryText(request.query.show))),
  );

  async function answer(
    reply: FastifyReply,
    id: string,
    fields: FormFields,
    edit: (open: OpenJob, prices: PriceIndex) => Edited | Promise<Edited>,
    anchor: string,
    inForm = false,
  ): Promise<FastifyReply> {
    const prices = await context.prices(id);
    const saved = await changeJob(context, id, fields, (open) => edit(open, prices));
    const { show = '' } = fields;
    if (saved.ok) {
      const query = show === '' ? '' : `?show=${encodeURIComponent(show)}`;
      return reply.redirect(`/jobs/${encodeURIComponent(id)}/compare${query}#${anchor}`, 303);
    }
    if (saved.why === 'clash') return sendHtml(reply, await page(id, show, saved.text), 409);
    const sentences = `Nothing was changed. ${Object.values(saved.problems).join(' ')}`;
    const form = inForm ? { values: fields, problems: saved.problems } : undefined;
    return sendHtml(reply, await page(id, show, sentences, form), 422);
  }

  for (const [verb, edit] of Object.entries(schemeEdits)) {
    app.post<{ Params: SchemePlace }>(`/jobs/:id/schemes/:scheme/${verb}`, async (request, reply) => {
      const { id, scheme } = request.params;
      const fields = formFields(request.body);
      // A new scheme is among the newest; a reader's own choice of schemes would hide it.
      const adds = verb === 'copy' || fields.as === 'copy';
      const shown = adds ? { ...fields, show: '' } : fields;
      return await answer(reply, id, shown, (open, prices) => edit(open, scheme, fields, prices), 'schemes');
    });
  }

  app.post<{ Params: { id: string } }>('/jobs/:id/schemes', async (request, reply) => {
    const fields = { ...formFields(request.body), show: '' };
    return await answer(
      reply,
      request.params.id,
      fields,
      ({ job }, prices) => drawUp(job, fields, prices),
      'schemes',
      true,
    );
  });
}

function drawUp(job: OpenJob['job'], fields: FormFields, prices: PriceIndex): Edited {
  const form = readForm(drawUpForm, fields);
  if (!form.ok) return form;
  const { kind, name, halves, heaters, material, least } = form.value;
  const laid = layOut(job, {
    kind,
    halves,
    id: freeSchemeId(job, 'S'),
    ...present({
      heaters: heaters === '' ? undefined : heaters,
      material: material === '' ? undefined : material,
    }),
  });
  if (!laid.ok) return refused({ '': laid.missing.map((missing) => missingText(missing, job)).join(' ') });
  const scheme = { ...laid.scheme, name: freeSchemeName(job, name === '' ? laid.scheme.name : name) };
  const added = addScheme(job, scheme);
  if (!least || !added.ok) return added;
  const sized = sizeAtLeastCost(added.job, scheme.id, prices);
  // Drawn up all the same: its page says by how much it is short.
  return sized.ok ? replaceSchemeRuns(added.job, scheme.id, sized.scheme.runs) : added;
}
