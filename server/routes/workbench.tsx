import type { FastifyInstance } from 'fastify';
import { jobOfAddress } from '../../views/job-address.ts';
import { ExplainPage } from '../../views/pages/explain-page.tsx';
import { Explanation } from '../../views/parts/explanation.tsx';
import { sendHtml, wantsParts } from '../http/html.ts';
import { Refusal } from '../http/refusal.ts';
import { lastOpenedJob, markOpened } from '../storage/job-store.ts';
import { explanationOf } from '../workbench/explanation.ts';
import { renderPage, renderPath } from '../workbench/render-page.tsx';
import { doneText } from '../workbench/turn-job.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { queryText } from './query-text.ts';

/** The page of one job, its path picker, and the explanation of each figure. */
export function registerWorkbench(app: FastifyInstance, context: AppContext): void {
  app.get<{ Params: { id: string }; Querystring: { path?: string | string[]; done?: string | string[] } }>(
    '/jobs/:id',
    async (request, reply) => {
      const open = await openOrRefuse(context, request.params.id);
      const job = jobOfAddress(open.id);
      if ((await lastOpenedJob(context.store)) !== job) await markOpened(context.store, job, context.now());
      const { path, done } = request.query;
      const notice = await doneText(context.store, queryText(done), open);
      return sendHtml(reply, renderPage(open, pathOf(path), notice));
    },
  );

  app.get<{ Params: { id: string }; Querystring: { path?: string | string[] } }>(
    '/jobs/:id/path',
    async (request, reply) => {
      const open = await openOrRefuse(context, request.params.id);
      const path = pathOf(request.query.path);
      return sendHtml(reply, wantsParts(request) ? renderPath(open, path) : renderPage(open, path));
    },
  );

  app.get<{ Params: { id: string; owner: string; quantity: string } }>(
    '/jobs/:id/explain/:owner/:quantity',
    async (request, reply) => {
      const { id, owner, quantity } = request.params;
      const open = await openOrRefuse(context, id);
      const found = explanationOf(open.job, open.report, owner, quantity);
      if (found === undefined) {
        throw new Refusal(
          404,
          'No such figure',
          'This job has no figure at this address; the run or fixture may have been renamed.',
        );
      }
      const markup = wantsParts(request) ? (
        <Explanation job={id} {...found} />
      ) : (
        <ExplainPage job={id} jobName={open.job.name} {...found} />
      );
      return sendHtml(reply, await markup);
    },
  );
}

function pathOf(query: string | string[] | undefined): string {
  const path = Array.isArray(query) ? query.at(-1) : query;
  return path ?? '';
}
