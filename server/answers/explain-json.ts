import type { Report, Step } from '../../engine/index.ts';
import type { ExplainAnswer } from './schema-explain.ts';
import { stepJson } from './step-json.ts';

/** The steps behind a figure for programs; `of` is the name that it was asked for by. */
export function explainJson({ network }: Report, of: string, steps: readonly Step[]): ExplainAnswer {
  const { job, scheme } = network;
  return {
    format: 'hightap-explain',
    version: 1,
    job: job.name,
    scheme: { id: scheme.id, name: scheme.name },
    of,
    steps: steps.map(stepJson),
  };
}
