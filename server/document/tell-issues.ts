import type { z } from 'zod';
import { fileLimits } from './file-limits.ts';
import { tellIssue } from './tell-issue.ts';

/** What is wrong in a document, one sentence each, at most 20 and a count of the others. */
export function tellIssues(
  issues: readonly z.core.$ZodIssue[],
  document: unknown,
  what: string,
): readonly string[] {
  const problems = issues.flatMap((issue) => tellIssue(issue, document, what).split('\n'));
  const { problemsTold, problemsSought } = fileLimits;
  const over = problems.length - problemsTold;
  if (over <= 0) return problems;
  const more = problems.length >= problemsSought ? `and at least ${over} more` : `and ${over} more`;
  return [...problems.slice(0, problemsTold), more];
}
