import type { FastifyReply } from 'fastify';
import { computations } from '../answers/computations.ts';
import type { AppContext } from '../routes/context.ts';
import { type ApiRoute, problemsBody, sendJson, sendProblems } from './api-route.ts';
import { bodyBytes } from './body-bytes.ts';

/** A post for each computation: the job's document in the question, nothing kept. */
export function computeRoutes({ answer }: AppContext): ApiRoute[] {
  return computations.map(({ name, about, question, answer: body }) => ({
    method: 'POST',
    path: `/api/${name}`,
    id: name,
    about,
    body: question,
    answers: {
      200: { about: 'the answer, in SI and unrounded', body },
      422: { about: 'the question has no answer', body: problemsBody },
      503: {
        about: 'too many questions are waiting, or this one took too long',
        body: problemsBody,
        headers: { 'retry-after': 'seconds after which to ask again' },
      },
    },
    handle: async (request, reply) => {
      const answered = await answer(name, bodyBytes(request), whenGone(reply));
      return answered.ok ? sendJson(reply, 200, answered.json) : sendProblems(reply, 422, answered.problems);
    },
  }));
}

/** A signal that is given when the connection ends before its answer. */
function whenGone(reply: FastifyReply): AbortSignal {
  const gone = new AbortController();
  reply.raw.once('close', () => {
    if (!reply.raw.writableEnded) gone.abort();
  });
  return gone.signal;
}
