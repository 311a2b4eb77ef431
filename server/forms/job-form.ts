import { z } from 'zod';
import { fileLimits } from '../document/file-limits.ts';
import { choice, optionalText, text } from './fields.ts';

export const jobForm = z.object({
  name: text('a name'),
  note: optionalText(fileLimits.note),
  chosen: text('a scheme', 64),
});

export const schemeForm = z.object({ chosen: text('a scheme', 64) });

export function newJobForm(starts: readonly string[]) {
  return z.object({ name: text('a name'), start: choice('a job to start from', starts) });
}
