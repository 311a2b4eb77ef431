import { readJob } from '../document/read-job.ts';
import { writeJob } from '../document/write-job.ts';
import type { Call } from './command.ts';
import { type Outcome, refuse } from './outcome.ts';
import { starterJob } from './starter-job.ts';

/** `hightap new [NAME]`: a job file on standard output. */
export async function newJob({ words }: Call): Promise<Outcome> {
  const [name = starterJob.name] = words;
  const read = await readJob(JSON.stringify({ ...starterJob, name }));
  if (!read.ok) return refuse(...read.problems.slice(0, 1));
  return { is: 'file', text: writeJob(read.job) };
}
