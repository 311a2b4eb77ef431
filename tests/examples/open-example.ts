import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildNetwork, type Job, type Report, report } from '../../engine/index.ts';
import { readJob } from '../../server/document/read-job.ts';

const folder = join(import.meta.dirname, '..', '..', 'examples');

/** File names of all examples. */
export const exampleNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort();

export function exampleText(name: string): string {
  return readFileSync(join(folder, name), 'utf8');
}

/** Reads an example; its problems, if it has any, end the test. */
export async function openExample(name: string): Promise<Job> {
  const read = await readJob(exampleText(name));
  if (!read.ok) throw new Error(`${name}: ${read.problems.join('; ')}`);
  return read.job;
}

/** Solves the chosen scheme; defects end the test. */
export function reportOf(job: Job): Report {
  const built = buildNetwork(job);
  if (!built.ok) throw new Error(`${job.name}: ${JSON.stringify(built.defects)}`);
  return report(built.network);
}
