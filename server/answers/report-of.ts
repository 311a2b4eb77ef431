import { buildNetwork, type Defect, type Job, type Report, report } from '../../engine/index.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { insteadOf } from '../words/nearest.ts';
import { shownWord } from '../words/shown-word.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';

/** Defects told in full; the others are counted. */
const mostDefects = 20;

/**
 * One scheme of a job built and solved: the chosen one where none is named.
 *
 * @param place how the job is named in sentences, such as its file
 */
export function reportOf(job: Job, scheme: string | undefined, place: string): Report | Refusal {
  const missing = scheme === undefined ? undefined : noScheme(job, place, scheme);
  if (missing !== undefined) return missing;
  const built = buildNetwork(job, scheme);
  return built.ok ? report(built.network) : refuseDefects(built.defects, job);
}

/** A refusal where a job has no scheme of that name. */
export function noScheme(job: Job, place: string, id: string): Refusal | undefined {
  const ids = job.schemes.map((scheme) => scheme.id);
  if (ids.includes(id)) return undefined;
  return refuse(`${place} has no scheme ${shownWord(id)}; ${insteadOf(id, ids)}`);
}

/** The report of a scheme that must serve at least one fixture, for what has no answer without. */
export function servingReportOf(job: Job, scheme: string | undefined, place: string): Report | Refusal {
  const found = reportOf(job, scheme, place);
  if (isRefusal(found) || found.network.inlets.length > 0) return found;
  return refuse('no run ends at a fixture yet; expected runs to one fixture at least');
}

/** What keeps a scheme from being a tree, one sentence each. */
export function refuseDefects(defects: readonly Defect[], job: Job): Refusal {
  const sentences = defects.slice(0, mostDefects).map((defect) => defectText(defect, job.units));
  const over = defects.length - mostDefects;
  return refuse(...sentences, ...(over > 0 ? [`and ${over} more`] : []));
}
