import type { z } from 'zod';
import type { Problems } from '../../views/workbench.ts';
import type { FormFields } from './form-fields.ts';

export type FormResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: Problems };

/** Checks posted fields; the first problem of each field is kept, in words. */
export function readForm<T>(schema: z.ZodType<T>, fields: FormFields): FormResult<T> {
  const result = schema.safeParse(fields);
  if (result.success) return { ok: true, value: result.data };
  const problems = new Map<string, string>();
  for (const issue of result.error.issues) {
    const name = String(issue.path[0] ?? '');
    if (!problems.has(name)) problems.set(name, issue.message);
  }
  return { ok: false, problems: Object.fromEntries(problems) };
}
