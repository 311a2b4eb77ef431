import type { Report, Step } from '../../engine/index.ts';
import { printRunLine } from '../../engine/job/print-run-line.ts';
import type { Cited } from '../../tables/table.ts';
import { chooseSteps } from '../answers/choose-steps.ts';
import { explainJson } from '../answers/explain-json.ts';
import type { Call } from './command.ts';
import { deferral, labelled } from './job-head.ts';
import { openJob } from './open-job.ts';
import { isRefusal, type Outcome } from './outcome.ts';
import { stepLines } from './step-lines.ts';
import { restsOn } from './unverified-lines.ts';

/** `hightap explain JOB RUN`, `RUN.quantity` or `FIXTURE.side`: the steps behind the figures. */
export async function explain({ words, values, flags, input }: Call): Promise<Outcome> {
  const report = await openJob(words[0]!, values.get('scheme'), input);
  if (isRefusal(report)) return report;
  const name = words[1]!;
  const steps = chooseSteps(report, name);
  if (isRefusal(steps)) return steps;
  if (!flags.has('json')) return { is: 'text', code: 0, lines: explainLines(report, name, steps) };
  return { is: 'json', code: 0, value: explainJson(report, name, steps) };
}

function explainLines({ network }: Report, name: string, steps: readonly Step[]): string[] {
  const at = network.positionOf.get(name.split('.')[0]!);
  const run = at === undefined ? undefined : network.runs[at]!;
  const rests = restsOn(unverifiedIn(steps));
  return [
    ...labelled('Job', network.job.name),
    ...labelled('Scheme', `${network.scheme.name} (${network.scheme.id})`),
    ...(run === undefined ? [] : labelled('Run', `${run.id} from ${run.from}: ${printRunLine(run)}`)),
    ...(rests === '' ? [] : labelled('Note', `what follows ${rests}, each marked where it is used`)),
    ...steps.flatMap((step) => ['', ...stepLines(step, network.job.units)]),
    '',
    ...deferral,
  ];
}

function unverifiedIn(steps: readonly Step[]): Cited[] {
  const found = new Map<string, Cited>();
  for (const term of steps.flatMap((step) => Object.values(step.terms))) {
    if (term.from !== 'table') continue;
    const { cite } = term;
    if (cite.verified !== 'memory' && cite.verified !== 'common-practice') continue;
    found.set(`${cite.table.id} ${cite.row ?? ''} ${cite.column ?? ''}`, cite);
  }
  return [...found.values()];
}
