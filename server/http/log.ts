import { randomUUID } from 'node:crypto';
import { type FastifyInstance, type FastifyServerOptions, LogController } from 'fastify';

export type LogLevel = 'silent' | 'error' | 'warn' | 'info';

interface Failure {
  readonly name?: unknown;
  readonly code?: unknown;
  readonly stack?: unknown;
}

/** Where a fault happened: its code and the places in our code, without the message, which may quote what somebody typed. */
export function failureWithoutWords(error: Failure): { type: string; message: string; stack: string } {
  const lines = typeof error.stack === 'string' ? error.stack.split('\n') : [];
  return {
    type: String(error.name ?? 'Error'),
    message: String(error.code ?? ''),
    stack: lines.filter((line) => /^\s+at /.test(line)).join('\n'),
  };
}

/** Lines of JSON that name no person, no address, no job: a request is its id, its route and how it went. */
export function logOptions(level: LogLevel): FastifyServerOptions {
  return {
    logger:
      level === 'silent'
        ? false
        : {
            level,
            base: null,
            serializers: {
              req: ({ id }: { readonly id: string }) => ({ id }),
              res: ({ statusCode }: { readonly statusCode: number }) => ({ status: statusCode }),
              err: failureWithoutWords,
            },
          },
    logController: new LogController({ disableRequestLogging: true }),
    genReqId: () => randomUUID(),
    // An id that a client chose could name somebody, or forge a line.
    requestIdHeader: false,
  };
}

/** One line for each answer. */
export function logAnswers(app: FastifyInstance): void {
  app.addHook('onResponse', async (request, reply) => {
    request.log.info(
      {
        method: request.method,
        route: request.routeOptions.url ?? 'none',
        status: reply.statusCode,
        ms: Math.round(reply.elapsedTime * 10) / 10,
      },
      'answered',
    );
  });
}
