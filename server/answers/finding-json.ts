import type { Finding, Job, Mend } from '../../engine/index.ts';
import type { Cited } from '../../tables/table.ts';
import { findingText } from '../../views/text/finding-text.ts';
import type { CitedAnswer, FindingAnswer, PlaceAnswer } from './schema-common.ts';

/** A finding for programs: its sentences, its source, and its figures in SI under `facts`. */
export function findingJson(finding: Finding, job: Job): FindingAnswer {
  const { code, severity, source, mend, ...facts } = finding;
  const { what, tryThis } = findingText(finding, job);
  return {
    code,
    severity,
    ...('run' in finding ? { run: finding.run } : {}),
    ...('fixture' in finding ? { fixture: finding.fixture } : {}),
    what,
    tryThis,
    ...(mend === undefined ? {} : { mend: mendJson(mend) }),
    source: 'table' in source ? citedJson(source) : placeJson(source.source, source.at, source.verified),
    facts,
  };
}

function mendJson(mend: Mend): FindingAnswer['mend'] & object {
  if (!('gain' in mend)) return mend;
  const { gain, ...others } = mend;
  return { ...others, gain_Pa: gain };
}

/** A table value for programs: as printed and in SI, with document, place and verification. */
export function citedJson({
  table,
  row,
  column,
  printed,
  unit,
  value,
  verified,
  ...own
}: Cited): CitedAnswer {
  return {
    ...placeJson(own.source ?? table.source, own.at ?? table.at, verified),
    title: table.title,
    ...(row === undefined ? {} : { row }),
    ...(column === undefined ? {} : { column }),
    printed,
    printedUnit: unit,
    value_SI: value,
  };
}

/** Where a rule or a formula stands and how far it was verified. */
export function placeJson(
  source: Cited['table']['source'],
  at: Cited['table']['at'],
  verified: Cited['verified'],
): PlaceAnswer {
  return { document: source.title, edition: source.edition, ...at, verified };
}
