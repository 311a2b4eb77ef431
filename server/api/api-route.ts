import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';

/** What an answer of one status holds. */
export interface ApiAnswer {
  readonly about: string;
  /** None where there is no body. */
  readonly body?: z.ZodType;
  /** Names of the headers that it bears, each with what it says. */
  readonly headers?: Readonly<Record<string, string>>;
}

/** A value in the address or the headers of a request. */
export interface ApiParameter {
  readonly name: string;
  readonly in: 'path' | 'header';
  readonly about: string;
  readonly required: boolean;
}

/** One address of the JSON interface: what is registered and what is described are made from the same entry. */
export interface ApiRoute {
  readonly method: 'GET' | 'POST' | 'PUT';
  /** With names in braces, `/api/jobs/{id}`. */
  readonly path: string;
  /** By which a generated client calls it. */
  readonly id: string;
  readonly about: string;
  readonly parameters?: readonly ApiParameter[];
  readonly body?: z.ZodType;
  readonly answers: { readonly [status: number]: ApiAnswer };
  readonly handle: (request: FastifyRequest, reply: FastifyReply) => Promise<FastifyReply>;
}

/** Why there is no answer. */
export const problemsBody = z
  .object({
    problems: z.array(z.string()).readonly().meta({ description: 'one sentence each, for a person' }),
  })
  .meta({ id: 'Problems', description: 'what is wrong with a request' });

/** Sends sentences in the place of an answer. */
export function sendProblems(reply: FastifyReply, status: number, problems: readonly string[]): FastifyReply {
  return sendJson(reply, status, JSON.stringify({ problems } satisfies z.infer<typeof problemsBody>));
}

/** Sends JSON text; answers are never kept by a cache. */
export function sendJson(reply: FastifyReply, status: number, json: string): FastifyReply {
  return reply
    .code(status)
    .header('cache-control', 'no-store')
    .type('application/json; charset=utf-8')
    .send(json);
}
