import { z } from 'zod';
import { book, listOf, marked, money, ofScheme } from './schema-common.ts';

const pipe = { material: z.exactOptional(z.string()), joint: z.exactOptional(z.string()) };

const article = {
  kind: z.string(),
  ...pipe,
  sizes: listOf(z.string(), "a tee's run in, run on and branch; a reducer's from and to; else one"),
  to: z.exactOptional(z.object({ material: z.string(), joint: z.string() })),
  type: z.exactOptional(z.string()),
  ports: z.exactOptional(z.int()),
};

const length = { length_m: z.number(), length_ft: z.string() };

const quantity = {
  count: z.exactOptional(z.number()),
  length_m: z.exactOptional(z.number()),
  length_ft: z.exactOptional(z.string()),
};

const line = z
  .object({
    item: z.string(),
    ...article,
    ...quantity,
    phase: z.string(),
    area: z.union([z.object({ level: z.string() }), z.enum(['outdoors', 'whole'])]),
    service: z.string(),
    from: listOf(
      z.object({ runs: listOf(z.string(), 'ids'), ...quantity }),
      'the runs that it comes from; the quantities add up to its own',
    ),
    price: z.string().meta({ description: 'money as a decimal, "with fittings" or "missing"' }),
  })
  .meta({ id: 'TakeOffLine' });

const difference = z
  .object({
    item: z.string(),
    unit: z.enum(['each', 'ft']),
    by: z.number(),
    before: z.number(),
    after: z.number(),
  })
  .meta({ id: 'Difference' });

export type LineAnswer = z.infer<typeof line>;

const against = z.object({
  name: z.string(),
  more: money.nullable(),
  added: listOf(difference, 'since then'),
  dropped: listOf(difference, 'since then'),
});

export type AgainstAnswer = z.infer<typeof against>;

/** What `hightap takeoff --json` prints. */
export const takeOffAnswer = z
  .object({
    ...marked('hightap-takeoff'),
    ...ofScheme,
    prices: book,
    lines: listOf(line, 'by kind, material, size, phase, area and service'),
    pieces: listOf(
      z.object({
        run: z.string(),
        material: z.string(),
        size: z.string(),
        service: z.string(),
        ...length,
        homeRun: z.boolean(),
      }),
      'pipe in the lengths that are cut',
    ),
    priced: money,
    labor_h: z.number(),
    total: money.nullable(),
    bid: listOf(z.object({ what: z.string(), amount: money }), 'the price built up').nullable(),
    against: against.nullable(),
    missingPrices: listOf(z.object(article), 'what the price book lacks'),
    questions: listOf(z.looseObject({ code: z.string(), what: z.string() }), 'to be asked before it is used'),
    rules: listOf(z.object({ rule: z.string(), says: z.string() }), 'how everything was counted'),
    values: listOf(z.object({ value: z.string(), verified: z.string() }), 'table values that it rests on'),
  })
  .meta({ id: 'TakeOffAnswer', description: 'what a scheme takes and what it costs' });

export type TakeOffAnswer = z.infer<typeof takeOffAnswer>;
