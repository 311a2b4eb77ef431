import type { FastifyInstance } from 'fastify';
import { PicturesPage } from '../../views/pages/pictures-page.tsx';
import { sendHtml } from '../http/html.ts';
import { picturesOf } from '../pictures/pictures-of.ts';
import type { AppContext } from './context.ts';
import { openOrRefuse } from './open-or-refuse.ts';
import { type Query, queryText } from './query-text.ts';

interface Asked {
  Params: { id: string };
  Querystring: Query;
}

/** The pictures of a job: two staircases (`a` and `b` name their paths), the supply curve, velocity by run. */
export function registerPictures(app: FastifyInstance, context: AppContext): void {
  app.get<Asked>('/jobs/:id/pictures', async ({ params, query }, reply) => {
    const open = await openOrRefuse(context, params.id);
    const pictures = picturesOf(open, queryText(query.a), queryText(query.b));
    return sendHtml(reply, await (<PicturesPage pictures={pictures} />));
  });
}
