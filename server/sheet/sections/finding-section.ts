import type { Report, Severity } from '../../../engine/index.ts';
import type { SheetSection } from '../../../views/sheet.ts';
import { findingText } from '../../../views/text/finding-text.ts';
import { group, paragraph, row, table, words } from '../blocks.ts';

const severities: readonly (readonly [Severity, string])[] = [
  ['error', 'Errors: a rule is broken'],
  ['warning', 'Warnings'],
  ['note', 'Notes'],
];

/** Every finding in words with its rule, errors first. */
export function findingSection({ network, findings }: Report): SheetSection {
  const rows = severities.flatMap(([severity, title]) => {
    const some = findings.filter((finding) => finding.severity === severity);
    if (some.length === 0) return [];
    return [
      group(`${title} (${some.length})`),
      ...some.map((finding) => {
        const { what, tryThis, source } = findingText(finding, network.job);
        return row(what, tryThis, source);
      }),
    ];
  });
  return {
    id: 'findings',
    title: 'Findings',
    blocks: [
      rows.length === 0
        ? paragraph('Nothing to report: every rule that this job can be held to is met.')
        : table('By severity', [words('What was found'), words('What would mend it'), words('Rule')], rows),
    ],
  };
}
