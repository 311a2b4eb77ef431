import {
  buildNetwork,
  compareSchemes,
  type Job,
  mostCompared,
  type PriceIndex,
  sizeScheme,
} from '../../engine/index.ts';
import type { Call } from './command.ts';
import { compareJson } from './compare-json.ts';
import { compareLines } from './compare-lines.ts';
import { noScheme, readJobAt, refuseDefects } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, type Refusal, refuse } from './outcome.ts';

/** `hightap compare JOB`: schemes side by side, as drawn or each at its least cost. */
export async function compare(call: Call): Promise<Outcome> {
  const { words, values, flags, input } = call;
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const job = await readJobAt(words[0]!, input);
  if (isRefusal(job)) return job;
  const ids = chosenIds(job, words[0]!, values.get('schemes'));
  if (isRefusal(ids)) return ids;
  const sized = flags.has('size') ? sizedJob(job, ids, prices) : undefined;
  const { compared, broken } = compareSchemes(sized?.job ?? job, prices, ids);
  if (compared.length === 0)
    return refuseDefects(
      broken.flatMap(({ defects }) => defects),
      job,
    );
  const comparison = { job, compared, broken, unsized: sized?.unsized };
  if (flags.has('json')) return { is: 'json', code: 0, value: compareJson(comparison, prices.book) };
  return { is: 'text', code: 0, lines: compareLines(comparison, prices.book) };
}

function chosenIds(job: Job, place: string, text: string | undefined): readonly string[] | Refusal {
  if (text === undefined) return job.schemes.slice(0, mostCompared).map(({ id }) => id);
  const ids = [...new Set(text.split(',').map((id) => id.trim()))].filter((id) => id !== '');
  for (const id of ids) {
    const missing = noScheme(job, place, id);
    if (missing !== undefined) return missing;
  }
  if (ids.length >= 1 && ids.length <= mostCompared) return ids;
  return refuse(`--schemes came with ${ids.length} schemes; expected 1 to ${mostCompared}`);
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
