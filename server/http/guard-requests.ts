import type { FastifyInstance, FastifyRequest } from 'fastify';
import { cameThroughProxy, hostIsLocal, writeIsSameOrigin } from './guard.ts';
import { Refusal } from './refusal.ts';
import { httpsOnly, securityHeaders } from './security-headers.ts';

/** Where people open Hightap. */
export interface Doors {
  /** Scheme and host of the one address, `https://pipes.example`; undefined for this machine alone. */
  readonly origin: string | undefined;
}

/** Each takes a request and says whether it may go on; replaced one by one in tests that show what each is for. */
export interface Guards {
  readonly host: (request: FastifyRequest, doors: Doors) => boolean;
  readonly proxy: (request: FastifyRequest, doors: Doors) => boolean;
  readonly origin: (request: FastifyRequest, doors: Doors) => boolean;
}

export const guards: Guards = {
  host: ({ headers }, { origin }) =>
    origin === undefined ? hostIsLocal(headers.host) : headers.host?.toLowerCase() === new URL(origin).host,
  proxy: ({ headers }, { origin }) => origin !== undefined || !cameThroughProxy(headers),
  origin: (request, { origin }) => writeIsSameOrigin(request, origin),
};

/** Puts the guards before every route, and the security headers on every answer. */
export function guardRequests(app: FastifyInstance, doors: Doors, { host, proxy, origin }: Guards): void {
  const secure = doors.origin?.startsWith('https:') === true;
  const headers = secure ? { ...securityHeaders, ...httpsOnly } : securityHeaders;
  app.addHook('onRequest', async (request, reply) => {
    reply.headers({ ...headers, 'x-request-id': request.id });
    if (!host(request, doors)) {
      throw new Refusal(403, 'Wrong address', 'Open Hightap by the address that it printed when it started.');
    }
    if (!proxy(request, doors)) {
      throw new Refusal(
        403,
        'Came through a proxy',
        'This Hightap is for this machine alone. To open it to others, give HIGHTAP_ORIGIN and add people first.',
      );
    }
    if (!origin(request, doors)) {
      throw new Refusal(
        403,
        'Not from this page',
        'This change came from another site, so nothing was done.',
      );
    }
  });
}
