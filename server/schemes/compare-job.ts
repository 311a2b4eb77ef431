import { compareSchemes, type Job, mostCompared, type PriceIndex } from '../../engine/index.ts';
import { priceName } from '../../engine/takeoff/price-item.ts';
import type { Comparison, SchemeColumn, SchemeCost } from '../../views/schemes.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { Refusal } from '../http/refusal.ts';
import type { OpenJob } from '../workbench/workbench.tsx';
import { costOfSpare, mostSizedRuns } from './cost-of-spare.ts';
import { nextTurn } from './next-turn.ts';

const letters = 'ABCDEF';

/** As many runs as are solved and priced for one page. */
const mostComparedRuns = 20_000;

/** Costs stay with the report that they belong to, so that a page that is loaded again sizes nothing twice. */
const known = new WeakMap<OpenJob, WeakMap<PriceIndex, Map<string, Comparison>>>();

/**
 * The schemes of a job beside each other, each with its least-cost curve; the others are served between two of them.
 *
 * @param asked ids of schemes; none for the chosen scheme and the newest ones
 */
export async function compareJob(
  open: OpenJob,
  prices: PriceIndex,
  asked: readonly string[],
): Promise<Comparison> {
  const shown = shownSchemes(open.job, asked);
  refuseTooLarge(open.job, shown);
  const byPrices = known.get(open) ?? new WeakMap<PriceIndex, Map<string, Comparison>>();
  known.set(open, byPrices);
  const kept = byPrices.get(prices) ?? new Map<string, Comparison>();
  byPrices.set(prices, kept);
  const key = `${asked.length > 0} ${shown.join(' ')}`;
  const before = kept.get(key);
  if (before !== undefined) return before;
  const comparison = await compare(open, prices, shown, asked);
  kept.set(key, comparison);
  return comparison;
}

/** Which schemes stand side by side, in the order of the job: those asked for, or the chosen and the newest. */
export function shownSchemes(job: Job, asked: readonly string[]): string[] {
  const ids = job.schemes.map(({ id }) => id);
  const wanted = ids.filter((id) => asked.includes(id));
  if (wanted.length > 0) return wanted.slice(0, mostCompared);
  const others = ids.filter((id) => id !== job.chosen).slice(1 - mostCompared);
  return ids.filter((id) => id === job.chosen || others.includes(id));
}

function refuseTooLarge({ schemes }: Job, shown: readonly string[]): void {
  const runs = schemes.reduce((sum, { id, runs }) => sum + (shown.includes(id) ? runs.length : 0), 0);
  if (runs <= mostComparedRuns) return;
  throw new Refusal(
    413,
    'Too large to compare',
    `These schemes have ${runs} runs together; no more than ${mostComparedRuns} are set side by side.`,
  );
}

async function compare(
  { id, revision, job }: OpenJob,
  prices: PriceIndex,
  shown: readonly string[],
  asked: readonly string[],
): Promise<Comparison> {
  const { compared, broken } = compareSchemes(job, prices, shown);
  const columns: SchemeColumn[] = [];
  let left = mostSizedRuns;
  for (const [at, scheme] of compared.entries()) {
    const { network } = scheme.report;
    left -= network.size;
    let cost: SchemeCost = { drawn: undefined, curve: [], why: tooLarge };
    if (left >= 0) {
      await nextTurn();
      cost = costOfSpare(network, scheme.price, prices);
    }
    columns.push({
      letter: letters[at]!,
      compared: scheme,
      cost,
      missing: scheme.price.missing.map(priceName),
    });
  }
  return {
    id,
    revision,
    job,
    book: prices.book,
    columns,
    broken: broken.map((scheme) => ({
      scheme,
      sentences: scheme.defects.map((defect) => defectText(defect, job.units)),
    })),
    asked: asked.length > 0 ? shown : [],
    reduced: compared.some(({ report }) =>
      report.network.devices.some(({ setPressure }) => setPressure !== undefined),
    ),
  };
}

const tooLarge = `No curve: the schemes on this page have more than ${mostSizedRuns} runs together.`;
