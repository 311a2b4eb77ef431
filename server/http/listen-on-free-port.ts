import type { FastifyInstance } from 'fastify';

/** How many ports are tried one after the other. */
const tries = 20;

/** Listens on `port`, or on the next one that is free, and gives the address for the reader. */
export async function listenOnFreePort(app: FastifyInstance, host: string, port: number): Promise<string> {
  for (let offset = 0; ; offset++) {
    try {
      return await app.listen({ host, port: port === 0 ? 0 : port + offset, listenTextResolver: () => '' });
    } catch (error) {
      const busy = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!busy || offset + 1 >= tries || port + offset + 1 > 65_535) throw error;
    }
  }
}
