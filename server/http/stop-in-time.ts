import type { FastifyInstance } from 'fastify';

/**
 * Stops an app: no new connection is taken, requests in flight are finished; after `within` ms those that remain are
 * cut off.
 *
 * @returns whether all of them were finished
 */
export async function stopInTime(app: FastifyInstance, within: number): Promise<boolean> {
  let inTime = true;
  const deadline = setTimeout(() => {
    inTime = false;
    app.server.closeAllConnections();
  }, within);
  // A connection that was busy when the server began to stop stays open for a next request, which will not come.
  const idle = setInterval(() => app.server.closeIdleConnections(), 50);
  await app.close();
  clearInterval(idle);
  clearTimeout(deadline);
  return inTime;
}
