import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import type { FastifyInstance } from 'fastify';
import { afterEach, describe, expect, it } from 'vitest';
import { buildApp } from '../../../server/app.tsx';
import { type HttpLimits, httpLimits } from '../../../server/http/limits.ts';
import { stopInTime } from '../../../server/http/stop-in-time.ts';
import { openStore } from '../../../server/storage/database.ts';

const quick: HttpLimits = { ...httpLimits, head: 400, request: 800, check: 50, connections: 20 };
let app: FastifyInstance | undefined;

afterEach(async () => {
  app?.server.closeAllConnections();
  await app?.close();
  app = undefined;
});

async function listening(limits: HttpLimits): Promise<number> {
  app = await buildApp({ store: await openStore(':memory:'), limits });
  return Number(new URL(await app.listen({ host: '127.0.0.1', port: 0 })).port);
}

/** A raw connection, and all that the server said on it. */
function dial(port: number): { socket: Socket; said: () => string; ended: Promise<unknown> } {
  const socket = connect(port, '127.0.0.1');
  let said = '';
  socket.on('data', (bytes: Buffer) => {
    said += bytes.toString();
  });
  socket.on('error', () => undefined);
  return { socket, said: () => said, ended: new Promise((resolve) => socket.on('close', resolve)) };
}

const head = 'GET /health HTTP/1.1\r\nHost: localhost\r\n';

describe('a slow client', () => {
  it('that sends its head letter by letter is cut off, while others are served', async () => {
    const port = await listening(quick);
    const slow = Array.from({ length: 15 }, () => dial(port));
    const started = Date.now();
    const drip = setInterval(() => {
      for (const { socket } of slow) if (socket.writable) socket.write('x');
    }, 20);
    for (const { socket } of slow) socket.write('GET / HTTP/1.1\r\nX-Slow: ');
    const answer = await fetch(`http://127.0.0.1:${port}/health`);
    expect(answer.status).toBe(200);
    await Promise.all(slow.map(({ ended }) => ended));
    clearInterval(drip);
    // The limit for a head, one round of the check, and much room for a busy machine.
    expect(Date.now() - started).toBeLessThan(5000);
    expect(slow[0]!.said()).toMatch(/^HTTP\/1\.1 408/);
  });

  it('that sends its body letter by letter is cut off', async () => {
    const port = await listening(quick);
    const slow = dial(port);
    slow.socket.write(
      'POST /jobs HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 100000\r\n\r\n',
    );
    const drip = setInterval(() => slow.socket.write('x'), 20);
    await slow.ended;
    clearInterval(drip);
    expect(slow.said()).toMatch(/^HTTP\/1\.1 408/);
  });

  it('waits without end where the limits are off, so that it is they that cut it off', async () => {
    const port = await listening({ ...quick, head: 0, request: 0 });
    const slow = dial(port);
    slow.socket.write('GET / HTTP/1.1\r\nX-Slow: ');
    const ended = await Promise.race([
      slow.ended.then(() => true),
      new Promise((resolve) => setTimeout(() => resolve(false), 1500)),
    ]);
    expect(ended).toBe(false);
    slow.socket.destroy();
  });
});

describe('too much at once', () => {
  it('of connections is turned away at the door', async () => {
    const port = await listening({ ...quick, head: 5000, request: 5000, connections: 5 });
    const held = Array.from({ length: 5 }, () => dial(port));
    await Promise.all(held.map(({ socket }) => once(socket, 'connect')));
    const over = dial(port);
    over.socket.write(`${head}\r\n`);
    await over.ended;
    expect(over.said()).toBe('');
    held[0]!.socket.write(`${head}Connection: close\r\n\r\n`);
    await held[0]!.ended;
    expect(held[0]!.said()).toMatch(/^HTTP\/1\.1 200/);
    for (const { socket } of held) socket.destroy();
  });

  it('of headers is refused', async () => {
    const port = await listening(quick);
    const large = dial(port);
    large.socket.write(`${head}X-Large: ${'x'.repeat(40_000)}\r\n\r\n`);
    await large.ended;
    expect(large.said()).toMatch(/^HTTP\/1\.1 431/);
  });
});

describe('stopping', () => {
  const postHead =
    'POST /api/check HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 2\r\n\r\n{';

  it('finishes a request in flight, and takes no new one', async () => {
    const port = await listening(httpLimits);
    const inFlight = dial(port);
    inFlight.socket.write(postHead);
    await new Promise((resolve) => setTimeout(resolve, 200));
    const stopped = stopInTime(app!, 5000);
    await new Promise((resolve) => setTimeout(resolve, 100));
    await expect(fetch(`http://127.0.0.1:${port}/health`)).rejects.toThrow();
    inFlight.socket.write('}');
    expect(await stopped).toBe(true);
    await inFlight.ended;
    expect(inFlight.said()).toMatch(/^HTTP\/1\.1 422[\s\S]*\{"problems"/);
  });

  it('does not wait longer than it said', async () => {
    const port = await listening(httpLimits);
    const hangs = dial(port);
    hangs.socket.write(postHead);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await stopInTime(app!, 300)).toBe(false);
    await hangs.ended;
  });
});
