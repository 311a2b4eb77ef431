import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import openapiTS, { astToString } from 'openapi-typescript';
import { describe, expect, it } from 'vitest';
import { testApp } from '../server/test-app.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const runFile = promisify(execFile);

describe('a client', () => {
  it('made from the OpenAPI document type-checks and runs the main job', async () => {
    const { app } = await testApp();
    const described = (await app.inject('/api/openapi.json')).body;
    const folder = mkdtempSync(join(root, 'node_modules', '.client-'));
    try {
      const types = astToString(await openapiTS(described));
      writeFileSync(join(folder, 'described.ts'), types);
      writeFileSync(join(folder, 'client.mts'), clientProgram);
      const options = [
        '--noEmit',
        '--strict',
        '--skipLibCheck',
        '--module',
        'nodenext',
        '--target',
        'es2023',
        '--allowImportingTsExtensions',
      ];
      await runFile(join(root, 'node_modules/.bin/tsc'), [...options, join(folder, 'client.mts')], {
        cwd: root,
      });
      const address = await app.listen({ host: '127.0.0.1', port: 0 });
      const { stdout } = await runFile(
        process.execPath,
        ['--import', 'tsx', join(folder, 'client.mts'), address],
        { cwd: root },
      );
      expect(JSON.parse(stdout)).toEqual({
        worst: 'RAIN.hot',
        short: 0,
        holds: true,
        fits: true,
        revision: 1,
      });
    } finally {
      await app.close();
      rmSync(folder, { recursive: true });
    }
  });
});

/** The main job by a client that knows nothing but the description: what is left, what breaks, sizes, keeping it. */
const clientProgram = `
import { readFileSync } from 'node:fs';
import createClient from 'openapi-fetch';
import type { paths, components } from './described.ts';

const client = createClient<paths>({ baseUrl: process.argv[2]! });
const job = JSON.parse(readFileSync('examples/three-level-house.json', 'utf8')) as components['schemas']['Job'];
function had<T>({ data, error }: { data?: T; error?: unknown }): T {
  if (data === undefined) throw new Error(JSON.stringify(error));
  return data;
}
const pressure = had(await client.POST('/api/pressure', { body: { job } }));
const check = had(await client.POST('/api/check', { body: { job } }));
const size = had(await client.POST('/api/size', { body: { job, notLarger: true } }));
const kept = had(await client.POST('/api/jobs', { body: job }));
console.log(JSON.stringify({
  worst: pressure.worst === null ? '' : pressure.worst.fixture + '.' + pressure.worst.side,
  short: check.counts.error,
  holds: (size.least?.worst?.margin_Pa ?? -1) >= 0,
  fits: size.fits,
  revision: kept.revision,
}));
`;
