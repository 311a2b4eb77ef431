import type { FastifyInstance } from 'fastify';
import { fileLimits } from '../document/file-limits.ts';
import type { AppContext } from '../routes/context.ts';
import { answerApiErrors } from './answer-api-errors.ts';
import { type ApiRoute, sendJson } from './api-route.ts';
import { computeRoutes } from './compute-routes.ts';
import { describeApi } from './describe-api.ts';
import { jobRoutes } from './job-routes.ts';

/** A question may hold a job and a price book or an earlier revision, each as large as its file may be. */
const questionBytes = 2 * fileLimits.bytes;

/** The routes of the JSON interface, but for its own description. */
export function apiRoutes(context: AppContext): readonly ApiRoute[] {
  return [...computeRoutes(context), ...jobRoutes(context)];
}

/** The JSON interface under `/api`: bodies are JSON and nothing else, errors are JSON as well. */
export async function registerApi(app: FastifyInstance, context: AppContext): Promise<void> {
  await app.register(async (api) => {
    answerApiErrors(api);
    api.removeAllContentTypeParsers();
    api.addContentTypeParser(
      'application/json',
      { parseAs: 'buffer', bodyLimit: questionBytes },
      (_request, body, done) => done(null, body),
    );
    const routes = apiRoutes(context);
    for (const { method, path, handle } of routes) {
      api.route({ method, url: path.replaceAll(/\{(\w+)\}/g, ':$1'), handler: handle });
    }
    let described: string | undefined;
    api.get('/api/openapi.json', (_request, reply) => {
      described ??= JSON.stringify(describeApi(routes), null, 2);
      return sendJson(reply, 200, described);
    });
  });
}
