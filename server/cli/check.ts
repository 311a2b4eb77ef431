import type { Finding, Job, Report, Severity } from '../../engine/index.ts';
import { findingText } from '../../views/text/finding-text.ts';
import { checkJson } from '../answers/check-json.ts';
import { countsOf, countWords, severities } from '../answers/findings-count.ts';
import type { Call } from './command.ts';
import { deferral, headLines, labelled } from './job-head.ts';
import { openJob } from './open-job.ts';
import { isRefusal, type Outcome } from './outcome.ts';
import { restsOn } from './unverified-lines.ts';
import { wrap } from './wrap.ts';

const headings: Record<Severity, string> = { error: 'Errors', warning: 'Warnings', note: 'Notes' };

/** `hightap check JOB`: every finding by severity; exit code 1 where one is an error. */
export async function check({ words, values, flags, input }: Call): Promise<Outcome> {
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const code = countsOf(report.findings).error > 0 ? 1 : 0;
  if (!flags.has('json')) return { is: 'text', code, lines: checkLines(report) };
  return { is: 'json', code, value: checkJson(report) };
}

function checkLines(report: Report): string[] {
  const { network, findings, unverified } = report;
  const rests = restsOn(unverified);
  return [
    ...headLines(report),
    ...labelled('Findings', countWords(findings)),
    ...(rests === '' ? [] : labelled('Note', `the worst path ${rests}; hightap pressure lists them`)),
    ...severities.flatMap((severity) => groupLines(severity, findings, network.job)),
    '',
    ...deferral,
  ];
}

function groupLines(severity: Severity, findings: readonly Finding[], job: Job): string[] {
  const group = findings.filter((one) => one.severity === severity);
  if (group.length === 0) return [];
  return [
    '',
    `${headings[severity]} (${group.length})`,
    ...group.flatMap((finding, at) => findingLines(finding, job, at + 1)),
  ];
}

function findingLines(finding: Finding, job: Job, number: number): string[] {
  const { what, tryThis, source } = findingText(finding, job);
  const indent = ' '.repeat(5);
  return [
    ...wrap(what, `${String(number).padStart(3)}. `),
    ...wrap(whereWords(finding), `${indent}Where: `),
    ...wrap(tryThis, `${indent}Try:   `),
    ...wrap(`${source}.`, `${indent}Rule:  `),
  ];
}

function whereWords(finding: Finding): string {
  const places = [
    'run' in finding ? `run ${finding.run}` : '',
    'fixture' in finding ? `fixture ${finding.fixture}` : '',
    'fixtures' in finding ? `fixtures ${finding.fixtures.join(', ')}` : '',
  ].filter((place) => place !== '');
  return places.length === 0 ? 'the whole job' : places.join(', ');
}
