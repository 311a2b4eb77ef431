import { type HotWait, hotWaits } from '../hotwater/hot-wait.ts';
import type { Job } from '../job/job.ts';
import { buildNetwork } from '../network/build-network.ts';
import type { Defect } from '../network/defect.ts';
import type { Report } from '../network/report.ts';
import { report } from '../report.ts';
import type { PriceIndex } from '../takeoff/index-prices.ts';
import { priceScheme, type SchemePrice } from '../takeoff/price-scheme.ts';

/** One scheme beside the others. */
export interface ComparedScheme {
  readonly id: string;
  readonly name: string;
  readonly report: Report;
  readonly price: SchemePrice;
  /** The longest wait for hot water, or undefined where nothing hot is piped. */
  readonly longestWait: HotWait | undefined;
}

/** A scheme that cannot stand beside the others, since it makes no tree. */
export interface BrokenScheme {
  readonly id: string;
  readonly name: string;
  readonly defects: readonly Defect[];
}

/** As many as a reader can keep in view side by side. */
export const mostCompared = 6;

/** Solves, judges and prices schemes of one job as they are drawn, in the order asked for, six at most. */
export function compareSchemes(
  job: Job,
  prices: PriceIndex,
  ids: readonly string[] = job.schemes.map(({ id }) => id),
): { readonly compared: readonly ComparedScheme[]; readonly broken: readonly BrokenScheme[] } {
  const compared: ComparedScheme[] = [];
  const broken: BrokenScheme[] = [];
  for (const id of ids.slice(0, mostCompared)) {
    const built = buildNetwork(job, id);
    const name = job.schemes.find((scheme) => scheme.id === id)?.name ?? id;
    if (!built.ok) {
      broken.push({ id, name, defects: built.defects });
      continue;
    }
    const { network } = built;
    compared.push({
      id,
      name,
      report: report(network),
      price: priceScheme(prices, network.scheme),
      longestWait: hotWaits(network)[0],
    });
  }
  return { compared, broken };
}
