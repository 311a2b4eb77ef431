import { z } from 'zod';

/** A list in an answer. */
export const listOf = <Entry extends z.ZodType>(entry: Entry, about: string) =>
  z.array(entry).readonly().meta({ description: about });

/** A decimal in a string, so that binary fractions never touch money. */
export const money = z.string().meta({ description: 'money as a decimal, in the currency of prices' });

export const side = z.enum(['cold', 'hot']);

const verified = z
  .enum([
    'seen',
    'seen-secondary',
    'textbook',
    'corroborated',
    'memory',
    'computed',
    'common-practice',
    'given',
  ])
  .meta({ description: 'how far it was compared with its document' });

const standsAt = {
  document: z.string(),
  edition: z.string(),
  table: z.exactOptional(z.string()),
  section: z.exactOptional(z.string()),
  page: z.exactOptional(z.string()),
  checkedOn: z.string(),
  verified,
};

export const place = z.object(standsAt).meta({
  id: 'Place',
  description: 'where a rule or formula stands',
});

export const citedValue = z
  .object({
    ...standsAt,
    title: z.string(),
    row: z.exactOptional(z.string()),
    column: z.exactOptional(z.string()),
    printed: z.number(),
    printedUnit: z.string(),
    value_SI: z.number(),
  })
  .meta({ id: 'TableValue', description: 'a table value as printed and in SI, with its document' });

export const counts = z.object({ error: z.int(), warning: z.int(), note: z.int() });

export const finding = z
  .object({
    code: z.string().meta({ description: 'stable id of the rule' }),
    severity: z.enum(['error', 'warning', 'note']),
    run: z.exactOptional(z.string()),
    fixture: z.exactOptional(z.string()),
    what: z.string(),
    tryThis: z.string(),
    mend: z.exactOptional(
      z
        .looseObject({ do: z.string() })
        .meta({ description: 'one change that would mend it, with gain_Pa where it gains pressure' }),
    ),
    source: z.union([citedValue, place]),
    facts: z.record(z.string(), z.unknown()).meta({ description: 'the figures of the finding, in SI' }),
  })
  .meta({ id: 'Finding', description: 'one check against a rule' });

/** The job and the scheme that an answer belongs to. */
export const ofScheme = {
  job: z.string().meta({ description: 'name of the job' }),
  scheme: z.object({ id: z.string(), name: z.string() }),
};

export const book = z
  .object({
    name: z.string(),
    invented: z.boolean().meta({ description: 'whether every price is made up' }),
    currency: z.string(),
    effective: z.string(),
    source: z.string(),
  })
  .meta({ id: 'PriceBookName', description: 'whose prices an answer rests on' });

export const worst = z
  .object({
    fixture: z.string(),
    side,
    residual_Pa: z.number(),
    required_Pa: z.number(),
    margin_Pa: z.number(),
  })
  .meta({ id: 'WorstInlet', description: 'the inlet with the smallest margin over its need' });

/** The mark and version of an answer; a key may be added, none changes its meaning while the version stays. */
export const marked = <Format extends string>(format: Format) => ({
  format: z.literal(format),
  version: z.literal(1),
});

export type PlaceAnswer = z.infer<typeof place>;
export type CitedAnswer = z.infer<typeof citedValue>;
export type FindingAnswer = z.infer<typeof finding>;
export type BookAnswer = z.infer<typeof book>;
