import { compareJson } from '../answers/compare-json.ts';
import { comparisonOf } from '../answers/comparison.ts';
import type { Call } from './command.ts';
import { compareLines } from './compare-lines.ts';
import { namesIn } from './names-in.ts';
import { readJobAt } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome } from './outcome.ts';
import { placeName } from './read-file.ts';

/** `hightap compare JOB`: schemes side by side, as drawn or each at its least cost. */
export async function compare(call: Call): Promise<Outcome> {
  const { words, values, flags, input } = call;
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const job = await readJobAt(words[0]!, input);
  if (isRefusal(job)) return job;
  const asked = values.get('schemes');
  const question = {
    size: flags.has('size'),
    ...(asked === undefined ? {} : { schemes: namesIn(asked) }),
  };
  const comparison = comparisonOf(job, question, prices, placeName(words[0]!));
  if (isRefusal(comparison)) return comparison;
  if (flags.has('json')) return { is: 'json', code: 0, value: compareJson(comparison, prices.book) };
  return { is: 'text', code: 0, lines: compareLines(comparison, prices.book) };
}
