import { type SizingStudy, studySizing } from '../../engine/index.ts';
import { writeJob } from '../document/write-job.ts';
import type { Call } from './command.ts';
import { openJob } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';
import { sizeJson } from './size-json.ts';
import { sizeLines } from './size-lines.ts';
import { sizeRules } from './size-rules.ts';
import { streetPressures } from './street-pressures.ts';

/** `hightap size JOB`: every run at the least total cost that holds every limit; exit code 1 where nothing fits. */
export async function size(call: Call): Promise<Outcome> {
  const { words, values, flags, input } = call;
  if (flags.has('json') && flags.has('write'))
    return refuse('--json and --write both came; expected one of them');
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const rules = sizeRules(call, report, prices);
  if (isRefusal(rules)) return rules;
  if (report.network.inlets.length === 0) {
    return refuse('no run ends at a fixture yet; expected runs to one fixture at least');
  }
  const streets = streetPressures(report.solution.supplyPressure, report.network.job.units);
  const study = studySizing(report, rules, streets);
  if (flags.has('write')) return written(study);
  const code = study.least === undefined ? 1 : 0;
  if (flags.has('json')) return { is: 'json', code, value: sizeJson(study, prices.book) };
  return { is: 'text', code, lines: sizeLines(study, prices.book, flags.has('all')) };
}

/** The job with the new sizes in the place of those drawn. */
function written({ drawn, least }: SizingStudy): Outcome {
  if (least === undefined) {
    const why = 'nothing fits, so there is no job to write; without --write it is told why';
    return { ...refuse(why), code: 1 };
  }
  const { job } = drawn.report.network;
  const schemes = job.schemes.map((one) => (one.id === least.scheme.id ? least.scheme : one));
  return { is: 'file', text: writeJob({ ...job, schemes }) };
}
