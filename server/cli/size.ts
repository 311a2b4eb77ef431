import type { SizingStudy } from '../../engine/index.ts';
import { servingReportOf } from '../answers/report-of.ts';
import { sizeJson } from '../answers/size-json.ts';
import type { SizeQuestion } from '../answers/size-rules.ts';
import { studySize } from '../answers/study-size.ts';
import { writeJob } from '../document/write-job.ts';
import type { Call } from './command.ts';
import { namesIn } from './names-in.ts';
import { readJobAt } from './open-job.ts';
import { openPrices } from './open-prices.ts';
import { isRefusal, type Outcome, refuse } from './outcome.ts';
import { placeName } from './read-file.ts';
import { sizeLines } from './size-lines.ts';

/** `hightap size JOB`: every run at the least total cost that holds every limit; exit code 1 where nothing fits. */
export async function size(call: Call): Promise<Outcome> {
  const { words, values, flags, input } = call;
  if (flags.has('json') && flags.has('write'))
    return refuse('--json and --write both came; expected one of them');
  const prices = await openPrices(call);
  if (isRefusal(prices)) return prices;
  const job = await readJobAt(words[0]!, input);
  if (isRefusal(job)) return job;
  const report = servingReportOf(job, values.get('scheme'), placeName(words[0]!));
  if (isRefusal(report)) return report;
  const study = studySize(report, questionOf(call), prices);
  if (isRefusal(study)) return study;
  if (flags.has('write')) return written(study);
  const code = study.least === undefined ? 1 : 0;
  if (flags.has('json')) return { is: 'json', code, value: sizeJson(study, prices.book) };
  return { is: 'text', code, lines: sizeLines(study, prices.book, flags.has('all')) };
}

function questionOf({ flags, values, repeated }: Call): SizeQuestion {
  const materials = values.get('material');
  return {
    keep: namesIn(values.get('keep') ?? ''),
    notLarger: flags.has('not-larger'),
    trunks: (repeated.get('trunk') ?? []).map(namesIn),
    ...(materials === undefined ? {} : { materials: namesIn(materials) }),
  };
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
