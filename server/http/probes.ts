import type { FastifyInstance, FastifyReply } from 'fastify';
import { sql } from 'kysely';
import type { Store } from '../storage/database.ts';
import type { Metrics } from './metrics.ts';

/** Longer than any store that is well takes, ms. */
const storeAnswersWithin = 2000;

/**
 * For whatever keeps the server running: `/health` says that the process answers, `/ready` that its store does as
 * well and it is not stopping, `/metrics` gives its figures.
 */
export function registerProbes(app: FastifyInstance, store: Store, metrics: Metrics): void {
  let stopping = false;
  app.addHook('preClose', async () => {
    stopping = true;
  });
  app.get('/health', (_request, reply) => say(reply, 200, 'ok'));
  app.get('/ready', async (_request, reply) => {
    if (stopping) return say(reply, 503, 'stopping');
    return (await storeAnswers(store)) ? say(reply, 200, 'ok') : say(reply, 503, 'the store does not answer');
  });
  app.get('/metrics', async (_request, reply) =>
    reply
      .header('cache-control', 'no-store')
      .type(metrics.type)
      .send(await metrics.text()),
  );
}

async function storeAnswers(store: Store): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), storeAnswersWithin);
  });
  const asked = sql`select 1`.execute(store).then(
    () => true,
    () => false,
  );
  const answered = await Promise.race([asked, tooLate]);
  clearTimeout(timer);
  return answered;
}

function say(reply: FastifyReply, status: number, word: string): FastifyReply {
  return reply
    .code(status)
    .header('cache-control', 'no-store')
    .type('text/plain; charset=utf-8')
    .send(`${word}\n`);
}
