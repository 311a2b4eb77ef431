import { z } from 'zod';
import { counts, finding, listOf, marked, ofScheme } from './schema-common.ts';

/** What `hightap check --json` prints. */
export const checkAnswer = z
  .object({
    ...marked('hightap-check'),
    ...ofScheme,
    passes: z.boolean(),
    counts,
    findings: listOf(finding, 'errors first'),
  })
  .meta({ id: 'CheckAnswer', description: 'every finding by severity' });

export type CheckAnswer = z.infer<typeof checkAnswer>;
