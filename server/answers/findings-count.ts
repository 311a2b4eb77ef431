import type { Finding, Severity } from '../../engine/index.ts';

/** Severities in the order in which they are told. */
export const severities: readonly Severity[] = ['error', 'warning', 'note'];

export function countsOf(findings: readonly Finding[]): Record<Severity, number> {
  const counts: Record<Severity, number> = { error: 0, warning: 0, note: 0 };
  for (const { severity } of findings) counts[severity]++;
  return counts;
}

/** `2 errors, 1 note`, or `none`. */
export function countWords(findings: readonly Finding[]): string {
  const counts = countsOf(findings);
  const words = severities
    .filter((severity) => counts[severity] > 0)
    .map((severity) => `${counts[severity]} ${severity}${counts[severity] === 1 ? '' : 's'}`);
  return words.length === 0 ? 'none' : words.join(', ');
}
