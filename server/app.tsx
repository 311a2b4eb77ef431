import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import formbody from '@fastify/formbody';
import multipart from '@fastify/multipart';
import fastifyStatic from '@fastify/static';
import Fastify, { type FastifyInstance } from 'fastify';
import type { PriceIndex } from '../engine/index.ts';
import { answerQuestion } from './answers/answer-question.ts';
import { registerApi } from './api/register-api.ts';
import { fileLimits } from './document/file-limits.ts';
import { answerErrors } from './http/answer-errors.tsx';
import { hostIsLocal, writeIsSameOrigin } from './http/guard.ts';
import { Refusal } from './http/refusal.ts';
import { noteRoutes } from './http/route-list.ts';
import { securityHeaders } from './http/security-headers.ts';
import { priceBooks } from './prices/price-books.ts';
import { shippedPrices } from './prices/shipped-prices.ts';
import { registerBin } from './routes/bin.tsx';
import { registerCompare } from './routes/compare.tsx';
import type { StartingJob } from './routes/context.ts';
import { registerEdits } from './routes/edits.ts';
import { registerHistory } from './routes/history.tsx';
import { registerJobs } from './routes/jobs.tsx';
import { registerPriceBook } from './routes/price-book.tsx';
import { registerPriceBooks } from './routes/price-books.tsx';
import { registerPriceImports } from './routes/price-imports.tsx';
import { registerQuickStart } from './routes/quick-start.tsx';
import { registerSizing } from './routes/sizing.tsx';
import { registerTakeOff } from './routes/take-off.tsx';
import { registerTurns } from './routes/turns.ts';
import { registerWorkbench } from './routes/workbench.tsx';
import type { Store } from './storage/database.ts';
import { openJobs } from './workbench/open-jobs.ts';

export interface AppOptions {
  readonly store: Store;
  /** What a new job may start from. */
  readonly starts?: readonly StartingJob[];
  /** The book that ships, for jobs that use no other; the invented one where it is left out. */
  readonly prices?: () => Promise<PriceIndex>;
  readonly now?: () => Date;
  readonly log?: boolean;
}

/** The largest form of the workbench, many times over. */
const formBytes = 200_000;

const assets = fileURLToPath(new URL('../views/assets/', import.meta.url));
const htmxFolder = join(dirname(createRequire(import.meta.url).resolve('htmx.org/package.json')), 'dist');

/** The app without a port: plugins, guards, routes and error pages. `main.ts` listens, tests inject. */
export async function buildApp({
  store,
  starts = [],
  prices = shippedPrices,
  now = () => new Date(),
  log = false,
}: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({
    logger: log ? { level: 'warn' } : false,
    bodyLimit: formBytes,
    routerOptions: { maxParamLength: 200 },
    requestTimeout: 30_000,
    forceCloseConnections: 'idle',
    ...answerErrors.frameworkOptions,
  });
  noteRoutes(app);
  answerErrors.register(app);

  app.addHook('onRequest', async (request, reply) => {
    reply.headers(securityHeaders);
    if (!hostIsLocal(request.headers.host)) {
      throw new Refusal(403, 'Wrong address', 'Open Hightap by the address that it printed when it started.');
    }
    if (!writeIsSameOrigin(request)) {
      throw new Refusal(
        403,
        'Not from this page',
        'This change came from another site, so nothing was done.',
      );
    }
  });

  // Forms are all that is taken; nothing here reads JSON or plain text.
  app.removeContentTypeParser(['application/json', 'text/plain']);
  await app.register(formbody, { bodyLimit: formBytes });
  await app.register(multipart, {
    limits: { fileSize: fileLimits.bytes, files: 1, fields: 4, fieldSize: 1000, parts: 5, headerPairs: 50 },
  });
  await app.register(fastifyStatic, { root: assets, prefix: '/assets/', maxAge: '1h', index: false });
  app.get('/assets/htmx.js', (_request, reply) => reply.sendFile('htmx.min.js', htmxFolder));

  const books = priceBooks(store, prices);
  const context = {
    store,
    jobs: openJobs(store),
    starts,
    books,
    prices: books.ofJob,
    answer: answerQuestion,
    now,
  };
  registerJobs(app, context);
  registerBin(app, context);
  registerWorkbench(app, context);
  registerEdits(app, context);
  registerTurns(app, context);
  registerHistory(app, context);
  registerCompare(app, context);
  registerSizing(app, context);
  registerTakeOff(app, context);
  registerQuickStart(app, context);
  registerPriceBooks(app, context);
  registerPriceBook(app, context);
  registerPriceImports(app, context);
  await registerApi(app, context);
  return app;
}
