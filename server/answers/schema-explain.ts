import { z } from 'zod';
import { citedValue, listOf, marked, ofScheme, place } from './schema-common.ts';

const known = {
  symbol: z.string(),
  meaning: z.exactOptional(z.string()),
  unit: z.exactOptional(z.string()),
  value_in_unit: z.exactOptional(z.number()),
  value_SI: z.number(),
};

const term = z
  .discriminatedUnion('from', [
    z.object({ ...known, from: z.literal('given'), field: z.string(), typed: z.string() }),
    z.object({ ...known, from: z.literal('table'), table: citedValue }),
    z.object({ ...known, from: z.literal('step'), step: z.string() }),
  ])
  .meta({ id: 'Term', description: 'one symbol of a formula, and where its value comes from' });

const step = z
  .object({
    id: z.string(),
    title: z.string(),
    formula: z.string(),
    arithmetic: z.string(),
    result: z.string(),
    value_SI: z.number(),
    unit: z.string(),
    value_in_unit: z.number(),
    source: place,
    terms: listOf(term, 'in the order of the formula'),
  })
  .meta({ id: 'Step', description: 'one figure with its formula, arithmetic and source' });

export type StepAnswer = z.infer<typeof step>;
export type TermAnswer = z.infer<typeof term>;

/** What `hightap explain --json` prints. */
export const explainAnswer = z
  .object({
    ...marked('hightap-explain'),
    ...ofScheme,
    of: z.string().meta({ description: 'the run, figure or inlet that was asked for' }),
    steps: listOf(step, 'each after those that it uses'),
  })
  .meta({ id: 'ExplainAnswer', description: 'the steps behind a figure' });

export type ExplainAnswer = z.infer<typeof explainAnswer>;
