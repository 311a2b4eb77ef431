import type { FastifyRequest } from 'fastify';

const loopbackNames = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Whether an address can be reached from this machine only. */
export function isLoopbackAddress(host: string): boolean {
  return host === 'localhost' || host === '::1' || /^127\.\d{1,3}\.\d{1,3}\.\d{1,3}$/.test(host);
}

/**
 * Whether the Host header names this machine. A page elsewhere can point its own name at 127.0.0.1 (DNS rebinding)
 * and would then count as the same origin; its requests still carry its name.
 */
export function hostIsLocal(host: string | undefined): boolean {
  if (host === undefined) return false;
  const name = host.replace(/:\d{1,5}$/, '').toLowerCase();
  return loopbackNames.has(name);
}

/** Whether a proxy says that it passed the request on: what looks like this machine then comes from anywhere. */
export function cameThroughProxy(headers: FastifyRequest['headers']): boolean {
  return proxyHeaders.some((name) => headers[name] !== undefined);
}

const proxyHeaders = [
  'forwarded',
  'x-forwarded-for',
  'x-forwarded-host',
  'x-forwarded-proto',
  'x-real-ip',
  'via',
];

const safeMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Whether a write comes from one of our own pages: by Sec-Fetch-Site where the browser sends it (Fetch Metadata),
 * else by Origin, which browsers send with every post (RFC 6454, Fetch standard). A client that sends neither is no
 * browser, so nobody's cookies or loopback access are being borrowed.
 *
 * @param own the one address that people open, where there is one; otherwise the address of the request
 */
export function writeIsSameOrigin(request: FastifyRequest, own?: string): boolean {
  if (safeMethods.has(request.method)) return true;
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined) return site === 'same-origin' || site === 'none';
  const origin = request.headers.origin;
  return origin === undefined || origin === (own ?? `http://${request.headers.host ?? ''}`);
}
