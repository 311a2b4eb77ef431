import { deviations, type InletResult, isChoice, type Job, type Report } from '../../engine/index.ts';
import { unverifiedOnPath } from '../../engine/network/unverified.ts';
import { deviationText } from '../../views/text/deviation-text.ts';
import { unitSymbol } from '../../views/text/figure.ts';
import { chooseInlet, inletName } from '../answers/choose-inlet.ts';
import { countsOf, countWords } from '../answers/findings-count.ts';
import { pressureJson } from '../answers/pressure-json.ts';
import type { Call } from './command.ts';
import { inletLines } from './inlet-lines.ts';
import { deferral, demandLines, headLines, labelled } from './job-head.ts';
import { ledgerLines } from './ledger-lines.ts';
import { openJob } from './open-job.ts';
import { isRefusal, type Outcome } from './outcome.ts';
import { leftAndNeeded } from './short-of.ts';
import { restsOn, unverifiedLines } from './unverified-lines.ts';
import { wrap } from './wrap.ts';

/** `hightap pressure JOB`: summary, inlets by margin, one path as a ledger. */
export async function pressure({ words, values, flags, input }: Call): Promise<Outcome> {
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const path = values.get('path');
  const shown = path === undefined ? report.worst : chooseInlet(report, path);
  if (shown !== undefined && isRefusal(shown)) return shown;
  if (flags.has('json')) return { is: 'json', code: 0, value: pressureJson(report, shown) };
  return { is: 'text', code: 0, lines: pressureLines(report, shown, flags.has('all')) };
}

function pressureLines(report: Report, shown: InletResult | undefined, all: boolean): string[] {
  const { network, solution, inlets, worst, findings } = report;
  const lines = [...headLines(report), ...demandLines(report)];
  if (worst === undefined || shown === undefined) {
    return [...lines, ...labelled('Worst', 'no run ends at a fixture yet'), '', ...deferral];
  }
  return [
    ...lines,
    ...labelled('Worst', `${worst.inlet.fixture.name} (${inletName(worst)})`),
    ...labelled('', worstWords(report, worst)),
    ...labelled('Findings', `${countWords(findings)}; hightap check tells them`),
    '',
    ...inletLines(inlets, network.job.units, all),
    '',
    ...ledgerLines(report, shown),
    '',
    ...unverifiedLines(unverifiedOnPath(network, solution, shown.inlet)),
    ...deviationLines(network.job),
    ...deferral,
  ];
}

/** Where the job departs from its profile; what it chooses stands in the line of the basis. */
function deviationLines(job: Job): string[] {
  const own = deviations(job).filter((deviation) => !isChoice(deviation));
  if (own.length === 0) return [];
  return [
    'Where the job departs from its code',
    ...own.flatMap((deviation) => wrap(deviationText(deviation, job.units), '  - ')),
    '',
  ];
}

function worstWords({ network, findings, passes, unverified }: Report, worst: InletResult): string {
  const { left, needed, margin } = leftAndNeeded(worst, network.job.units);
  const unit = unitSymbol('pressure', network.job.units);
  const errors = countsOf(findings).error;
  const verdict =
    worst.margin < 0
      ? `SHORT by ${margin.replace('-', '')} ${unit}`
      : passes
        ? `passes with ${margin} ${unit} to spare`
        : `${margin} ${unit} to spare, but ${errors} ${errors === 1 ? 'rule is' : 'rules are'} broken`;
  const rests = restsOn(unverified);
  const words = `${left} ${unit} left, ${needed} ${unit} needed: ${verdict}`;
  return rests === '' ? words : `${words} (${rests}, listed below)`;
}
