import { takenOff } from '../answers/taken-off.ts';
import { takeOffJson } from '../answers/takeoff-json.ts';
import { csvText } from '../spreadsheet/csv-text.ts';
import { takeOffHead, takeOffRows } from '../takeoff/take-off-rows.ts';
import type { Call } from './command.ts';
import { openJob } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';
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
  const { job } = report.network;
  const rate = (name: string): string => values.get(name) ?? '';
  const rates = {
    laborRate: rate('rate'),
    tax: rate('tax'),
    overhead: rate('overhead'),
    margin: rate('margin'),
  };
  const file = values.get('against');
  const before = file === undefined ? undefined : await openJob(file, undefined, input);
  if (before !== undefined && isRefusal(before)) return before;
  const made = takenOff(report, prices, rates, before);
  if (isRefusal(made)) return made;
  const { taken, priced, built, earlier } = made;
  if (flags.has('csv')) {
    return { is: 'file', text: csvText([takeOffHead, ...takeOffRows(job, priced, prices.book)]) };
  }
  if (flags.has('json')) return { is: 'json', code: 0, value: takeOffJson(job, made, prices.book) };
  return { is: 'text', code: 0, lines: takeOffLines(job, taken, priced, prices.book, built, earlier) };
}
