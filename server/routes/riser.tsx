import type { FastifyInstance } from 'fastify';
import { pathTo } from '../../engine/index.ts';
import { RiserPage } from '../../views/pages/riser-page.tsx';
import { drawScheme, viewNamed } from '../drawing/draw-scheme.ts';
import { sendHtml } from '../http/html.ts';
import { shownWord } from '../words/shown-word.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

interface Asked {
  Params: { id: string };
  Querystring: Query;
}

/** The drawing of the chosen scheme; `run` marks one of its runs, `view` chooses riser or plan-wise tree. */
export function registerRiser(app: FastifyInstance, context: AppContext): void {
  app.get<Asked>('/jobs/:id/riser', async ({ params, query }, reply) => {
    const { id, report } = await openOrRefuse(context, params.id);
    const run = queryText(query.run);
    const marked = report.network.positionOf.get(run);
    const notice =
      run === '' || marked !== undefined
        ? ''
        : `${report.network.scheme.name} has no run ${shownWord(run)}, so none is marked.`;
    const { network, worst } = report;
    const worstPath = worst === undefined ? [] : pathTo(network, worst.inlet.run);
    const view = {
      id,
      report,
      worstPath,
      drawing: drawScheme(report, viewNamed(queryText(query.view))),
      marked,
      notice,
    };
    return sendHtml(reply, await (<RiserPage view={view} />));
  });
}
