import type { Job, Report } from '../../engine/index.ts';
import { reportOf } from '../answers/report-of.ts';
import { readJob } from '../document/read-job.ts';
import { isRefusal, type Refusal, refuse } from './outcome.ts';
import { type CliInput, placeName, readFile } from './read-file.ts';

/** Reads a job, builds one of its schemes (the chosen one where none is named) and solves it. */
export async function openJob(
  place: string,
  schemeId: string | undefined,
  input: CliInput,
): Promise<Report | Refusal> {
  const job = await readJobAt(place, input);
  return isRefusal(job) ? job : reportOf(job, schemeId, placeName(place));
}

/** Reads a job file. */
export async function readJobAt(place: string, input: CliInput): Promise<Job | Refusal> {
  const bytes = await readFile(place, input);
  if (isRefusal(bytes)) return bytes;
  const read = await readJob(bytes);
  if (read.ok) return read.job;
  return refuseProblems(place, read.problems);
}

/** The first problem of a file, and a count of the others. */
export function refuseProblems(place: string, problems: readonly string[]): Refusal {
  const [first = 'cannot be read', ...others] = problems;
  const more = countOf(others);
  return refuse(`${placeName(place)}: ${first}${more === '' ? '' : `; and ${more} more`}`);
}

/** How many problems there are beside the first; a list that was cut ends in a count of its own. */
function countOf(problems: readonly string[]): string {
  if (problems.length === 0) return '';
  const cut = /^and (at least )?(\d+) more$/.exec(problems.at(-1)!);
  if (cut === null) return String(problems.length);
  return `${cut[1] ?? ''}${problems.length - 1 + Number(cut[2])}`;
}
