import type { FastifyInstance } from 'fastify';
import { Refusal } from '../http/refusal.ts';
import { statusOf } from '../http/status-of.ts';
import { sendProblems } from './api-route.ts';

const sentences: { readonly [status: number]: string } = {
  400: 'the request could not be understood',
  413: 'the body is larger than any question; expected at most 40 MB',
  415: 'the body is no JSON; expected the content type application/json',
};

/** Refusals and errors as JSON, for every route of the JSON interface. */
export function answerApiErrors(api: FastifyInstance): void {
  api.setErrorHandler((error, request, reply) => {
    if (error instanceof Refusal && error.statusCode === 503) reply.header('retry-after', '5');
    if (error instanceof Refusal) return sendProblems(reply, error.statusCode, [error.message]);
    const status = statusOf(error);
    if (status >= 500) request.log.error(error);
    return sendProblems(reply, status, [
      status >= 500
        ? 'something went wrong inside Hightap; nothing was changed'
        : (sentences[status] ?? sentences[400]!),
    ]);
  });
}
