import { buildNetwork, type Job, type PriceIndex, type Scheme, sizeScheme } from '../../engine/index.ts';
import { priceName } from '../../engine/takeoff/price-item.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { unsizedText } from '../../views/text/unsized-text.ts';
import { mostSizedRuns } from './cost-of-spare.ts';

export type SizedAtLeastCost =
  | { readonly ok: true; readonly scheme: Scheme }
  | { readonly ok: false; readonly sentence: string };

/** A scheme of a job with the sizes that cost least, every run free; or in words why there are none. */
export function sizeAtLeastCost(job: Job, id: string, prices: PriceIndex): SizedAtLeastCost {
  const built = buildNetwork(job, id);
  if (!built.ok) {
    return { ok: false, sentence: built.defects.map((defect) => defectText(defect, job.units)).join(' ') };
  }
  const { network } = built;
  if (network.size > mostSizedRuns) return { ok: false, sentence: tooManyRuns(network.size) };
  const result = sizeScheme(network, { prices, keep: new Set() });
  if (result.ok) return { ok: true, scheme: result.sized.scheme };
  const { unsized } = result;
  const missing = unsized.why === 'no-pipe' ? unsized.missing.map(priceName) : [];
  return { ok: false, sentence: unsizedText(unsized, [...new Set(missing)], job.units) };
}

/** Says that a scheme is larger than one request may size. */
export function tooManyRuns(runs: number): string {
  return `This scheme has ${runs} runs; no more than ${mostSizedRuns} are sized at a time, so that one page does not keep the others waiting.`;
}
