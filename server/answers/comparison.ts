import {
  type BrokenScheme,
  buildNetwork,
  type ComparedScheme,
  compareSchemes,
  type Job,
  mostCompared,
  type PriceIndex,
  sizeScheme,
} from '../../engine/index.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';
import { noScheme, refuseDefects } from './report-of.ts';

/** Schemes of one job, ready to be set side by side. */
export interface Comparison {
  readonly job: Job;
  readonly compared: readonly ComparedScheme[];
  readonly broken: readonly BrokenScheme[];
  /** Where each was sized first: those that no sizes fit, as drawn. Undefined where all are as drawn. */
  readonly unsized: ReadonlySet<string> | undefined;
}

export interface CompareQuestion {
  /** Ids in the order of the answer; the first six where it is left out. */
  readonly schemes?: readonly string[];
  /** Each sized at the least cost first. */
  readonly size: boolean;
}

/**
 * Schemes of a job set side by side, as drawn or each at its least cost.
 *
 * @param place how the job is named in sentences
 */
export function comparisonOf(
  job: Job,
  { schemes, size }: CompareQuestion,
  prices: PriceIndex,
  place: string,
): Comparison | Refusal {
  const ids = chosenIds(job, place, schemes);
  if (isRefusal(ids)) return ids;
  const sized = size ? sizedJob(job, ids, prices) : undefined;
  const { compared, broken } = compareSchemes(sized?.job ?? job, prices, ids);
  if (compared.length > 0) return { job, compared, broken, unsized: sized?.unsized };
  return refuseDefects(
    broken.flatMap(({ defects }) => defects),
    job,
  );
}

function chosenIds(
  job: Job,
  place: string,
  asked: readonly string[] | undefined,
): readonly string[] | Refusal {
  if (asked === undefined) return job.schemes.slice(0, mostCompared).map(({ id }) => id);
  const ids = [...new Set(asked)];
  for (const id of ids) {
    const missing = noScheme(job, place, id);
    if (missing !== undefined) return missing;
  }
  if (ids.length >= 1 && ids.length <= mostCompared) return ids;
  return refuse(`${ids.length} schemes came; expected 1 to ${mostCompared}`);
}

/** The job with those schemes at their least cost, and the names of those that no sizes fit: they stay as drawn. */
function sizedJob(
  job: Job,
  ids: readonly string[],
  prices: PriceIndex,
): { job: Job; unsized: ReadonlySet<string> } {
  const unsized = new Set<string>();
  const schemes = job.schemes.map((scheme) => {
    const built = ids.includes(scheme.id) ? buildNetwork(job, scheme.id) : undefined;
    if (built === undefined || !built.ok) return scheme;
    const result = sizeScheme(built.network, { prices, keep: new Set() });
    if (result.ok) return result.sized.scheme;
    unsized.add(scheme.id);
    return scheme;
  });
  return { job: { ...job, schemes }, unsized };
}
