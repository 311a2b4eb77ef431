import type { FastifyInstance, FastifyReply } from 'fastify';
import { TakeOffPage } from '../../views/pages/take-off-page.tsx';
import { type TakeOffGrouping, takeOffGroupings } from '../../views/take-off.ts';
import { sendHtml } from '../http/html.ts';
import { safeFileName } from '../http/safe-file-name.ts';
import { byteOrderMark, csvText } from '../spreadsheet/csv-text.ts';
import { xlsxFile } from '../spreadsheet/xlsx-file.ts';
import { cutPlanOf, pipePlanOf } from '../takeoff/cut-plan.ts';
import { takeOffHead, takeOffRows } from '../takeoff/take-off-rows.ts';
import { takeOffScheme } from '../takeoff/take-off-scheme.ts';
import { takeOffSheet } from '../takeoff/take-off-sheet.ts';
import { takeOffWorkbook } from '../takeoff/take-off-workbook.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

interface Asked {
  Params: { id: string };
  Querystring: Query;
}

/** The take-off of a scheme as a page, as CSV and as a workbook. */
export function registerTakeOff(app: FastifyInstance, context: AppContext): void {
  app.get<Asked>('/jobs/:id/takeoff', async ({ params, query }, reply) => {
    const open = await openOrRefuse(context, params.id);
    const sheet = takeOffSheet(open, await context.prices(params.id), {
      scheme: queryText(query.scheme),
      against: queryText(query.against),
      grouping: groupingOf(queryText(query.by)),
      plan: pipePlanOf(queryText(query.pipe)),
      rates: {
        laborRate: queryText(query.rate),
        tax: queryText(query.tax),
        overhead: queryText(query.overhead),
        margin: queryText(query.margin),
      },
    });
    const status = typeof sheet.bid === 'string' ? 422 : 200;
    return sendHtml(reply, await (<TakeOffPage sheet={sheet} />), status);
  });

  app.get<Asked>('/jobs/:id/takeoff.csv', async ({ params, query }, reply) => {
    const { job } = await openOrRefuse(context, params.id);
    const prices = await context.prices(params.id);
    const { taken, priced } = takeOffScheme(job, queryText(query.scheme), prices);
    const text = csvText([takeOffHead, ...takeOffRows(job, priced, prices.book)]);
    return sendFile(
      reply,
      'text/csv; charset=utf-8',
      fileName(job.name, taken.scheme, '.csv'),
      byteOrderMark + text,
    );
  });

  app.get<Asked>('/jobs/:id/takeoff.xlsx', async ({ params, query }, reply) => {
    const { job } = await openOrRefuse(context, params.id);
    const prices = await context.prices(params.id);
    const one = takeOffScheme(job, queryText(query.scheme), prices);
    const plan = cutPlanOf(pipePlanOf(queryText(query.pipe)));
    const bytes = await xlsxFile(takeOffWorkbook(job, one, prices.book, plan));
    return sendFile(
      reply,
      'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      fileName(job.name, one.taken.scheme, '.xlsx'),
      bytes,
    );
  });
}

function groupingOf(asked: string): TakeOffGrouping {
  return Object.hasOwn(takeOffGroupings, asked) ? (asked as TakeOffGrouping) : 'size';
}

function fileName(job: string, scheme: { readonly name: string }, ending: string): string {
  return safeFileName(`${safeFileName(job, '').slice(0, 40)} take-off ${scheme.name}`, ending);
}

function sendFile(reply: FastifyReply, type: string, name: string, content: string | Buffer): FastifyReply {
  return reply
    .type(type)
    .header('content-disposition', `attachment; filename="${name}"`)
    .header('cache-control', 'no-store')
    .send(content);
}
