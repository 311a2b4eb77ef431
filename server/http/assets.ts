import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { serveAssetsFrom } from '../../views/asset-address.ts';

const folder = fileURLToPath(new URL('../../views/assets/', import.meta.url));
const htmxFolder = join(dirname(createRequire(import.meta.url).resolve('htmx.org/package.json')), 'dist');
const htmxFile = 'htmx.min.js';

/** A name for the assets as they are: another as soon as any byte of them is another. */
function fingerprint(): string {
  const hash = createHash('sha256');
  const files = [
    ...readdirSync(folder)
      .sort()
      .map((name) => join(folder, name)),
    join(htmxFolder, htmxFile),
  ];
  for (const file of files) hash.update(file.slice(folder.length)).update(readFileSync(file));
  return hash.digest('hex').slice(0, 12);
}

/** Serves style sheets and scripts under a folder named by their content, to be kept for good, and under the plain one. */
export async function registerAssets(app: FastifyInstance): Promise<void> {
  const named = `/assets/${fingerprint()}/`;
  const forGood = { maxAge: '365d', immutable: true } as const;
  const forAnHour = { maxAge: '1h' } as const;
  await app.register(fastifyStatic, { root: folder, prefix: named, index: false, ...forGood });
  await app.register(fastifyStatic, {
    root: folder,
    prefix: '/assets/',
    index: false,
    decorateReply: false,
    ...forAnHour,
  });
  app.get(`${named}htmx.js`, (_request, reply) => reply.sendFile(htmxFile, htmxFolder, forGood));
  app.get('/assets/htmx.js', (_request, reply) => reply.sendFile(htmxFile, htmxFolder, forAnHour));
  serveAssetsFrom(named);
}
