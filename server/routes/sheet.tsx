import type { FastifyInstance } from 'fastify';
import type { UnitSystem } from '../../engine/index.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { SheetPage } from '../../views/pages/sheet-page.tsx';
import { type Paper, papers, type Sheet } from '../../views/sheet.ts';
import { isRefusal } from '../answers/refusal.ts';
import { sendHtml } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { safeFileName } from '../http/safe-file-name.ts';
import { dayOf } from '../sheet/day.ts';
import { makeSheet } from '../sheet/make-sheet.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

interface Asked {
  Params: { id: string };
  Querystring: Query;
}

/** The whole calculation of a scheme as a page and as a PDF. */
export function registerSheet(app: FastifyInstance, context: AppContext): void {
  app.get<Asked>('/jobs/:id/sheet', async ({ params, query }, reply) => {
    const open = await openOrRefuse(context, params.id);
    const { id, job } = open;
    const sheet = await sheetFor(context, open, query);
    const scheme = queryText(query.scheme) || job.chosen;
    return sendHtml(reply, await (<SheetPage id={id} job={job} scheme={scheme} sheet={sheet} />));
  });

  app.get<Asked>('/jobs/:id/sheet.pdf', async ({ params, query }, reply) => {
    const open = await openOrRefuse(context, params.id);
    const sheet = await sheetFor(context, open, query);
    // Loaded when the first PDF is asked for: a server that starts has no need of typefaces yet.
    const { sheetPdf } = await import('../pdf/sheet-pdf.ts');
    const { bytes } = await sheetPdf(sheet);
    return reply
      .type('application/pdf')
      .header('content-disposition', `inline; filename="${safeFileName(open.job.name, ' sheet.pdf')}"`)
      .header('cache-control', 'no-store')
      .send(bytes);
  });
}

/** The sheet that an address asks for; of choices that are none, the job's own are taken. */
async function sheetFor({ prices, now }: AppContext, { id, job }: OpenJob, query: Query): Promise<Sheet> {
  const units = queryText(query.units);
  const paper = queryText(query.paper);
  const choice = {
    scheme: queryText(query.scheme) || undefined,
    units: Object.hasOwn(displayUnits, units) ? (units as UnitSystem) : undefined,
    paper: Object.hasOwn(papers, paper) ? (paper as Paper) : undefined,
    date: dayOf(now()),
  };
  const made = makeSheet(job, choice, await prices(id), job.name);
  if (isRefusal(made)) throw new Refusal(409, 'No sheet can be made', `${made.sentences.join('. ')}.`);
  return made;
}
