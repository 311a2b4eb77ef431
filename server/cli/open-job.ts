import { buildNetwork, type Defect, type Job, type Report, report } from '../../engine/index.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { readJob } from '../document/read-job.ts';
import { insteadOf } from './nearest.ts';
import { isRefusal, type Refusal, refuse } from './outcome.ts';
import { type CliInput, placeName, readFile } from './read-file.ts';
import { shownWord } from './shown-word.ts';

/** Defects told in full; the others are counted. */
const mostDefects = 20;

/** Reads a job, builds one of its schemes (the chosen one where none is named) and solves it. */
export async function openJob(
  place: string,
  schemeId: string | undefined,
  input: CliInput,
): Promise<Report | Refusal> {
  const job = await readJobAt(place, input);
  if (isRefusal(job)) return job;
  if (schemeId !== undefined) {
    const missing = noScheme(job, place, schemeId);
    if (missing !== undefined) return missing;
  }
  const built = buildNetwork(job, schemeId);
  return built.ok ? report(built.network) : refuseDefects(built.defects, job);
}

/** A refusal where a job has no scheme of that name. */
export function noScheme(job: Job, place: string, id: string): Refusal | undefined {
  const ids = job.schemes.map((scheme) => scheme.id);
  if (ids.includes(id)) return undefined;
  return refuse(`${placeName(place)} has no scheme ${shownWord(id)}; ${insteadOf(id, ids)}`);
}

/** What keeps a scheme from being a tree, one sentence each. */
export function refuseDefects(defects: readonly Defect[], job: Job): Refusal {
  const sentences = defects.slice(0, mostDefects).map((defect) => defectText(defect, job.units));
  const over = defects.length - mostDefects;
  return refuse(...sentences, ...(over > 0 ? [`and ${over} more`] : []));
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
