import { z } from 'zod';
import { describedJob } from './schema.ts';

/** The format of a job file as JSON Schema (draft 2020-12), with what each field means and its units. */
export function jobJsonSchema(): object {
  return z.toJSONSchema(describedJob, { io: 'input' });
}
