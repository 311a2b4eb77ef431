import {
  buildNetwork,
  type Job,
  type PriceIndex,
  priceTakeOff,
  type TakeOff,
  type TakeOffPrice,
  takeOff,
} from '../../engine/index.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { Refusal } from '../http/refusal.ts';

/** As many runs as are taken off for one request. */
const mostRuns = 10_000;

/** A scheme taken off its drawing and priced. */
export interface PricedTakeOff {
  readonly taken: TakeOff;
  readonly priced: TakeOffPrice;
}

/**
 * Takes a scheme of a job off and prices it.
 *
 * @param asked id of the scheme; the chosen one where it is empty
 * @throws a refusal in words where there is no such scheme, where it makes no tree, or where it is too large
 */
export function takeOffScheme(job: Job, asked: string, prices: PriceIndex): PricedTakeOff {
  const id = asked === '' ? job.chosen : asked;
  const scheme = job.schemes.find((one) => one.id === id);
  if (scheme === undefined) {
    const ids = job.schemes.map((one) => one.id).join(', ');
    throw new Refusal(404, 'No such scheme', `This job has no scheme ${id}; it has ${ids}.`);
  }
  if (scheme.runs.length > mostRuns) {
    const sentence = `${scheme.name} has ${scheme.runs.length} runs; no more than ${mostRuns} are taken off at once.`;
    throw new Refusal(413, 'Too large to take off', sentence);
  }
  const built = buildNetwork(job, id);
  if (!built.ok) {
    const sentences = built.defects.slice(0, 5).map((defect) => defectText(defect, job.units));
    throw new Refusal(409, 'This scheme makes no tree', `${scheme.name}: ${sentences.join(' ')}`);
  }
  const taken = takeOff(built.network);
  return { taken, priced: priceTakeOff(taken, prices) };
}
