import { z } from 'zod';
import { book, counts, finding, listOf, marked, money, worst } from './schema-common.ts';

const scheme = z
  .object({
    id: z.string(),
    name: z.string(),
    passes: z.boolean(),
    worst: worst.nullable(),
    price: z.object({
      total: money.nullable(),
      pipe: money,
      fittings: money,
      devices: money,
      missing: listOf(z.unknown(), 'what the price book lacks'),
    }),
    labor_h: z.number(),
    pipe: listOf(
      z.object({ material: z.string(), size: z.string(), length_m: z.number() }),
      'developed length by material and size',
    ),
    fittings: listOf(
      z.object({
        material: z.string(),
        joint: z.string(),
        kind: z.string(),
        size: z.string(),
        count: z.int(),
      }),
      'fittings as drawn',
    ),
    longestHotWait: z
      .object({ fixture: z.string(), length_m: z.number(), volume_m3: z.number(), wait_s: z.number() })
      .nullable(),
    counts,
    findings: listOf(finding, 'every rule that is broken or worth a note'),
    fits: z.exactOptional(z.boolean()).meta({ description: 'whether any sizes fit, where each was sized' }),
  })
  .meta({ id: 'ComparedScheme' });

export type SchemeAnswer = z.infer<typeof scheme>;

/** What `hightap compare --json` prints. */
export const compareAnswer = z
  .object({
    ...marked('hightap-compare'),
    job: z.string().meta({ description: 'name of the job' }),
    prices: book,
    sized: z.boolean().meta({ description: 'whether each scheme was sized at the least cost first' }),
    schemes: listOf(scheme, 'side by side'),
    broken: listOf(
      z.object({ id: z.string(), name: z.string(), defects: listOf(z.string(), 'one sentence each') }),
      'schemes that make no tree',
    ),
  })
  .meta({ id: 'CompareAnswer', description: 'schemes of a job side by side' });

export type CompareAnswer = z.infer<typeof compareAnswer>;
