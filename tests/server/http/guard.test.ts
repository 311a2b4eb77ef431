import type { FastifyRequest } from 'fastify';
import { describe, expect, it } from 'vitest';
import { hostIsLocal, isLoopbackAddress, writeIsSameOrigin } from '../../../server/http/guard.ts';

function request(method: string, headers: Record<string, string>): FastifyRequest {
  return { method, headers } as unknown as FastifyRequest;
}

describe('isLoopbackAddress', () => {
  it.each(['127.0.0.1', '127.9.9.9', '::1', 'localhost'])('takes %s', (host) => {
    expect(isLoopbackAddress(host)).toBe(true);
  });
  it.each(['0.0.0.0', '::', '192.168.1.4', 'example.test', '127.0.0.1.example.test', ''])(
    'refuses %s',
    (host) => {
      expect(isLoopbackAddress(host)).toBe(false);
    },
  );
});

describe('hostIsLocal', () => {
  it.each(['localhost', 'localhost:4400', '127.0.0.1:4400', '[::1]:4400', 'LOCALHOST:1'])(
    'takes %s',
    (host) => {
      expect(hostIsLocal(host)).toBe(true);
    },
  );
  it.each(['evil.test', 'localhost.evil.test:4400', '127.0.0.1.evil.test', 'evil.test:127', undefined, ''])(
    'refuses %s',
    (host) => {
      expect(hostIsLocal(host)).toBe(false);
    },
  );
});

describe('writeIsSameOrigin', () => {
  const host = { host: 'localhost:4400' };
  it('lets every reading request through', () => {
    expect(writeIsSameOrigin(request('GET', { ...host, 'sec-fetch-site': 'cross-site' }))).toBe(true);
  });
  it('goes by Sec-Fetch-Site first', () => {
    expect(writeIsSameOrigin(request('POST', { ...host, 'sec-fetch-site': 'same-origin' }))).toBe(true);
    expect(
      writeIsSameOrigin(
        request('POST', { ...host, 'sec-fetch-site': 'cross-site', origin: 'http://localhost:4400' }),
      ),
    ).toBe(false);
    expect(writeIsSameOrigin(request('POST', { ...host, 'sec-fetch-site': 'same-site' }))).toBe(false);
  });
  it('goes by Origin where that is all there is', () => {
    expect(writeIsSameOrigin(request('POST', { ...host, origin: 'http://localhost:4400' }))).toBe(true);
    expect(writeIsSameOrigin(request('POST', { ...host, origin: 'http://localhost:4401' }))).toBe(false);
    expect(writeIsSameOrigin(request('POST', { ...host, origin: 'null' }))).toBe(false);
  });
});
