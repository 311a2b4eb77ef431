import { z } from 'zod';
import { book, listOf, marked, money, ofScheme, side, worst } from './schema-common.ts';

const sizes = {
  pipeAndFittings: money.nullable(),
  labor_h: z.number().nullable(),
  withDevices: money.nullable(),
  passes: z.boolean(),
  worst: worst.nullable(),
};

const change = z
  .looseObject({ do: z.string(), gain_Pa: z.number(), cost: money })
  .meta({ id: 'Change', description: 'one change, what it gains at the worst inlet and what it costs' });

const unsized = z
  .union([
    z.object({
      why: z.literal('no-pipe'),
      runs: listOf(z.string(), 'runs that no size in stock can serve'),
    }),
    z.object({ why: z.enum(['tied', 'no-fixture']) }),
    z.object({
      why: z.literal('short'),
      fixture: z.string(),
      side,
      short_Pa: z.number(),
      streetNeeded_Pa: z.number().nullable(),
      costThere: money.nullable(),
      changes: listOf(change, 'single changes that gain most for their money'),
    }),
  ])
  .meta({ id: 'Unsized', description: 'why nothing fits' });

export type SizesAnswer = z.infer<z.ZodObject<typeof sizes>>;
export type ChangeAnswer = z.infer<typeof change>;
export type UnsizedAnswer = z.infer<typeof unsized>;

const pipe = z.object({ size: z.string(), material: z.string() });

/** What `hightap size --json` prints. */
export const sizeAnswer = z
  .object({
    ...marked('hightap-size'),
    ...ofScheme,
    prices: book,
    supply: z.object({ pressure_Pa: z.number() }),
    fits: z.boolean(),
    drawn: z.object(sizes),
    least: z.object({ ...sizes, need_Pa: z.number().nullable() }).nullable(),
    unsized: unsized.nullable(),
    runs: listOf(z.object({ id: z.string(), drawn: pipe, least: pipe.nullable() }), 'sizes run by run'),
    methods: listOf(
      z.object({
        method: z.string(),
        ...sizes,
        larger: z.int().nullable(),
        smaller: z.int().nullable(),
      }),
      'what the hand methods choose, and in how many runs they differ',
    ),
    curve: listOf(
      z.object({ street_Pa: z.number(), cost: money.nullable() }),
      'the least cost at other pressures of the street',
    ),
    changes: listOf(change, 'single changes and what they gain'),
    missingPrices: listOf(z.unknown(), 'what the price book lacks'),
  })
  .meta({ id: 'SizeAnswer', description: 'every run at the least cost that holds every limit' });

export type SizeAnswer = z.infer<typeof sizeAnswer>;
