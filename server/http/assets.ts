import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { serveAssetsFrom } from '../../views/asset-address.ts';

const folder = fileURLToPath(new URL('../../views/assets/', import.meta.url));
const { resolve } = createRequire(import.meta.url);

/** Files that packages bring, under the names that pages know them by. */
const packaged = [
  { name: 'htmx.js', from: 'htmx.org', file: 'htmx.min.js' },
  { name: 'uplot.js', from: 'uplot', file: 'uPlot.iife.min.js' },
  { name: 'uplot.css', from: 'uplot', file: 'uPlot.min.css' },
].map(({ name, from, file }) => ({
  name,
  file,
  folder: join(dirname(resolve(`${from}/package.json`)), 'dist'),
}));

/** A name for the assets as they are: another as soon as any byte of them is another. */
function fingerprint(): string {
  const hash = createHash('sha256');
  const files = [
    ...readdirSync(folder)
      .sort()
      .map((name) => join(folder, name)),
    ...packaged.map((one) => join(one.folder, one.file)),
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
  for (const { name, file, folder } of packaged) {
    app.get(`${named}${name}`, (_request, reply) => reply.sendFile(file, folder, forGood));
    app.get(`/assets/${name}`, (_request, reply) => reply.sendFile(file, folder, forAnHour));
  }
  serveAssetsFrom(named);
}
