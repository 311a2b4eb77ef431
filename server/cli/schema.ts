import { jobJsonSchema } from '../document/json-schema.ts';
import type { Outcome } from './outcome.ts';

/** `hightap schema`. */
export async function schema(): Promise<Outcome> {
  return { is: 'json', code: 0, value: jobJsonSchema() };
}
