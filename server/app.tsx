import compress from '@fastify/compress';
import formbody from '@fastify/formbody';
import multipart from '@fastify/multipart';
import Fastify, { type FastifyInstance } from 'fastify';
import type { PriceIndex } from '../engine/index.ts';
import { jobOfAddress } from '../views/job-address.ts';
import type { AnswerPool } from './answers/answer-pool.ts';
import { answerQuestion } from './answers/answer-question.ts';
import { registerApi } from './api/register-api.ts';
import { fileLimits } from './document/file-limits.ts';
import { answerErrors } from './http/answer-errors.tsx';
import { registerAssets } from './http/assets.ts';
import { type Guards, guardRequests, guards as requestGuards } from './http/guard-requests.ts';
import { type HttpLimits, httpLimits } from './http/limits.ts';
import { type LogLevel, logAnswers, logOptions } from './http/log.ts';
import { measure } from './http/metrics.ts';
import { registerProbes } from './http/probes.ts';
import { noteRoutes } from './http/route-list.ts';
import { priceBooks } from './prices/price-books.ts';
import { shippedPrices } from './prices/shipped-prices.ts';
import { registerAddRuns } from './routes/add-runs.tsx';
import { registerBin } from './routes/bin.tsx';
import { registerCompare } from './routes/compare.tsx';
import type { StartingJob } from './routes/context.ts';
import { registerEdits } from './routes/edits.ts';
import { registerHistory } from './routes/history.tsx';
import { registerJobs } from './routes/jobs.tsx';
import { registerPictures } from './routes/pictures.tsx';
import { registerPriceBook } from './routes/price-book.tsx';
import { registerPriceBooks } from './routes/price-books.tsx';
import { registerPriceImports } from './routes/price-imports.tsx';
import { registerQuickStart } from './routes/quick-start.tsx';
import { registerRiser } from './routes/riser.tsx';
import { registerRows } from './routes/rows.tsx';
import { registerSheet } from './routes/sheet.tsx';
import { registerSizing } from './routes/sizing.tsx';
import { registerTakeOff } from './routes/take-off.tsx';
import { registerTrials } from './routes/trials.ts';
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
  readonly log?: LogLevel;
  /** Scheme and host that people open it by; this machine alone where it is left out. */
  readonly origin?: string | undefined;
  readonly limits?: HttpLimits;
  /** Answers the questions of the JSON interface: on this thread where it is left out, as in tests. */
  readonly answer?: AnswerPool['answer'];
  /** In place of the product's own, for tests that show what each is for. */
  readonly guards?: Guards;
}

/** The largest form of the workbench, many times over. */
const formBytes = 200_000;

/** The app without a port: plugins, guards, routes and error pages. `main.ts` listens, tests inject. */
export async function buildApp({
  store,
  starts = [],
  prices = shippedPrices,
  now = () => new Date(),
  log = 'silent',
  origin,
  limits = httpLimits,
  answer = answerQuestion,
  guards = requestGuards,
}: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({
    ...logOptions(log),
    bodyLimit: formBytes,
    routerOptions: { maxParamLength: 200 },
    http: { headersTimeout: limits.head, connectionsCheckingInterval: limits.check },
    requestTimeout: limits.request,
    connectionTimeout: limits.silence,
    keepAliveTimeout: limits.keepAlive,
    forceCloseConnections: 'idle',
    ...answerErrors.frameworkOptions,
  });
  app.server.maxConnections = limits.connections;
  noteRoutes(app);
  answerErrors.register(app);

  guardRequests(app, { origin }, guards);
  logAnswers(app);
  const metrics = measure(app);

  // Forms are all that is taken; nothing here reads JSON or plain text.
  app.removeContentTypeParser(['application/json', 'text/plain']);
  await app.register(formbody, { bodyLimit: formBytes });
  await app.register(multipart, {
    limits: { fileSize: fileLimits.bytes, files: 1, fields: 4, fieldSize: 1000, parts: 5, headerPairs: 50 },
  });
  // Bodies that come in compressed are refused: a few bytes of one could grow to fill the memory.
  await app.register(compress, { encodings: ['br', 'gzip'], globalDecompression: false });
  await registerAssets(app);

  registerProbes(app, store, metrics);
  const books = priceBooks(store, prices);
  const context = {
    store,
    jobs: openJobs(store),
    starts,
    books,
    prices: (id: string) => books.ofJob(jobOfAddress(id)),
    answer,
    now,
  };
  registerJobs(app, context);
  registerBin(app, context);
  registerWorkbench(app, context);
  registerRows(app, context);
  registerEdits(app, context);
  registerAddRuns(app, context);
  registerTurns(app, context);
  registerTrials(app, context);
  registerHistory(app, context);
  registerPictures(app, context);
  registerCompare(app, context);
  registerSizing(app, context);
  registerTakeOff(app, context);
  registerSheet(app, context);
  registerRiser(app, context);
  registerQuickStart(app, context);
  registerPriceBooks(app, context);
  registerPriceBook(app, context);
  registerPriceImports(app, context);
  await registerApi(app, context);
  return app;
}
