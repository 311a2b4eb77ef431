import type { FastifyRequest } from 'fastify';

/** The bytes that a request to the JSON interface came with; none where it has no body. */
export function bodyBytes({ body }: FastifyRequest): Uint8Array {
  return body instanceof Uint8Array ? body : new Uint8Array();
}
