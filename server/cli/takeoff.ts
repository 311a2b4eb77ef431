import { priceTakeOff, takeOff } from '../../engine/index.ts';
import { csvText } from '../spreadsheet/csv-text.ts';
import { bidLines } from '../takeoff/bid-lines.ts';
import { takeOffHead, takeOffRows } from '../takeoff/take-off-rows.ts';
import { against } from './against.ts';
import type { Call } from './command.ts';
import { openJob } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';
import { takeOffJson } from './takeoff-json.ts';
import { takeOffLines } from './takeoff-lines.ts';

/** `hightap takeoff JOB`: what is loaded on the truck for a scheme, and what it costs. */
export async function takeoff(call: Call): Promise<Outcome> {
  const { words, values, flags, input } = call;
  if (flags.has('json') && flags.has('csv'))
    return refuse('--json and --csv both came; expected one of them');
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const taken = takeOff(report.network);
  const priced = priceTakeOff(taken, prices);
  const { job } = report.network;
  const rate = (name: string): string => values.get(name) ?? '';
  const rates = {
    laborRate: rate('rate'),
    tax: rate('tax'),
    overhead: rate('overhead'),
    margin: rate('margin'),
  };
  const made = bidLines(priced.priced, priced.hours, rates);
  if (typeof made === 'string') return refuse(made);
  const built = priced.total === undefined ? undefined : made;
  const earlier = await against(call, taken, priced, prices);
  if (earlier !== undefined && isRefusal(earlier)) return earlier;
  if (flags.has('csv')) {
    return { is: 'file', text: csvText([takeOffHead, ...takeOffRows(job, priced, prices.book)]) };
  }
  if (flags.has('json'))
    return { is: 'json', code: 0, value: takeOffJson(job, taken, priced, prices.book, built, earlier) };
  return { is: 'text', code: 0, lines: takeOffLines(job, taken, priced, prices.book, built, earlier) };
}
