import type { FastifyInstance } from 'fastify';

/** One method and address that an app answers. */
export interface RouteEntry {
  readonly method: string;
  /** With its parameters as they were registered, `/jobs/:id`. */
  readonly path: string;
}

const lists = new WeakMap<FastifyInstance, RouteEntry[]>();

/** Notes every route that is registered from now on, in every scope of the app. */
export function noteRoutes(app: FastifyInstance): void {
  const noted: RouteEntry[] = [];
  lists.set(app, noted);
  app.addHook('onRoute', ({ method, url }) => {
    for (const one of [method].flat()) noted.push({ method: one, path: url });
  });
}

/** Every route of an app that {@link noteRoutes} was told of. */
export function routesOf(app: FastifyInstance): readonly RouteEntry[] {
  return lists.get(app) ?? [];
}
