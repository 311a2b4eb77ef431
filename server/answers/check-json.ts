import type { Report } from '../../engine/index.ts';
import { findingJson } from './finding-json.ts';
import { countsOf, severities } from './findings-count.ts';
import type { CheckAnswer } from './schema-check.ts';

/** Every finding for programs, errors first: SI, unrounded. */
export function checkJson({ network, findings, passes }: Report): CheckAnswer {
  return {
    format: 'hightap-check',
    version: 1,
    job: network.job.name,
    scheme: { id: network.scheme.id, name: network.scheme.name },
    passes,
    counts: countsOf(findings),
    findings: severities.flatMap((severity) =>
      findings.filter((one) => one.severity === severity).map((one) => findingJson(one, network.job)),
    ),
  };
}
