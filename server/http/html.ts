import type { FastifyReply, FastifyRequest } from 'fastify';

/** Whether the browser asks for changed parts; a history restore needs the whole page. */
export function wantsParts(request: FastifyRequest): boolean {
  return request.headers['hx-request'] === 'true' && request.headers['hx-history-restore-request'] !== 'true';
}

/** Sends markup; answers differ by HX-Request and are never kept by a cache. */
export function sendHtml(reply: FastifyReply, markup: string, status = 200): FastifyReply {
  return reply
    .code(status)
    .header('vary', 'HX-Request')
    .header('cache-control', 'no-store')
    .type('text/html; charset=utf-8')
    .send(markup);
}
