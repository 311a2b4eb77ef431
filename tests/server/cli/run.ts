import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Printed } from '../../../server/cli/print.ts';
import { runCli } from '../../../server/cli/run-cli.ts';
import { starterJob } from '../../../server/cli/starter-job.ts';

/** Runs a command line in this process, with text on standard input. */
export function run(args: readonly string[], stdin = ''): Promise<Printed> {
  return runCli(args, {
    stdin: (async function* () {
      yield new TextEncoder().encode(stdin);
    })(),
  });
}

const folder = mkdtempSync(join(tmpdir(), 'hightap-cli-'));
let written = 0;

/** Writes a file that a test needs and gives its path. */
export function fileOf(content: string | object): string {
  const path = join(folder, `${written++}.json`);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

/** The starting job with other fields. */
export function jobFile(changes: object = {}): string {
  return fileOf({ ...starterJob, ...changes });
}

/** The starting job with its runs changed one by one. */
export function withRuns(
  change: (run: { id: string; from: string; line: string }) => object | undefined,
): object {
  const [scheme] = starterJob.schemes;
  const runs = scheme.runs.flatMap((one) => change(one) ?? []);
  return { schemes: [{ ...scheme, runs }] };
}

export const shortOfPressure = { supply: { ...starterJob.supply, low: '30 psi' } };

const examplesFolder = new URL('../../../examples/', import.meta.url).pathname;

/** Every example of the repository. */
export function exampleFiles(): string[] {
  return readdirSync(examplesFolder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => join(examplesFolder, name));
}
