import { z } from 'zod';
import { indexPrices, type Job, type PriceIndex } from '../../engine/index.ts';
import { readJobObject } from '../document/read-job.ts';
import { readPricesObject } from '../document/read-prices.ts';
import { describedJob } from '../document/schema.ts';
import { fieldsOf } from '../document/schema-parts.ts';
import { pricesReader } from '../document/schema-prices.ts';
import { tellIssues } from '../document/tell-issues.ts';
import { shippedPrices } from '../prices/shipped-prices.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';

/** A job file as a part of a question. */
export const jobDocument = describedJob.meta({ ...describedJob.meta(), id: 'Job' });

/** A price book as a part of a question. */
export const pricesDocument = pricesReader.meta({ id: 'PriceBook', description: 'a price book' });

/** The documents that a question came with, read. */
export interface Asked {
  readonly job: Job;
  /** Of the question, else those that ship. */
  readonly prices: PriceIndex;
  /** An earlier revision of the job, where one came. */
  readonly before: Job | undefined;
}

/** One thing that Hightap works out from a job, with the shapes of its question and its answer. */
export interface Computation {
  readonly name: string;
  readonly about: string;
  /** As it is described: the documents in full. */
  readonly question: z.ZodType;
  readonly answer: z.ZodType;
  /** The answer to a parsed question, or sentences that say what is wrong with it. */
  readonly compute: (question: unknown) => Promise<object | Refusal>;
}

interface Made<Shape extends z.core.$ZodLooseShape> {
  readonly name: string;
  readonly about: string;
  /** Which documents it takes beside the job. */
  readonly takes?: readonly ('prices' | 'before')[];
  /** What else may be asked. */
  readonly asks: Shape;
  readonly answer: z.ZodType;
  readonly compute: (asked: Asked, rest: z.output<z.ZodObject<Shape>>) => object | Refusal;
}

/** A computation whose question is one object: the job's document and what is asked of it. */
export function computation<Shape extends z.core.$ZodLooseShape>(made: Made<Shape>): Computation {
  const { name, about, takes = [], asks, answer, compute } = made;
  const documents = {
    job: jobDocument,
    prices: z.exactOptional(pricesDocument),
    before: z.exactOptional(jobDocument.meta({ description: 'an earlier revision of the job' })),
  };
  const taken = ['job' as const, ...takes];
  const described = fieldsOf({
    ...Object.fromEntries(taken.map((field) => [field, documents[field]])),
    ...asks,
  }).meta({ id: `${name[0]!.toUpperCase()}${name.slice(1)}Question`, description: about });
  // The documents have readers of their own, which tell more and migrate older versions.
  const outer = fieldsOf({
    ...Object.fromEntries(taken.map((field) => [field, z.exactOptional(z.unknown())])),
    ...asks,
  });
  const rest = z.object(asks);
  return {
    name,
    about,
    question: described,
    answer,
    compute: async (question) => {
      const read = outer.safeParse(question);
      if (!read.success) return refuse(...tellIssues(read.error.issues, question, 'question'));
      const asked = await readDocuments(read.data);
      return isRefusal(asked) ? asked : compute(asked, rest.parse(question));
    },
  };
}

async function readDocuments(question: { readonly [field: string]: unknown }): Promise<Asked | Refusal> {
  const job = await readJobObject(question.job);
  if (!job.ok) return refuse(...job.problems.map((problem) => `job: ${problem}`));
  const prices = question.prices === undefined ? undefined : await readPricesObject(question.prices);
  if (prices?.ok === false) return refuse(...prices.problems.map((problem) => `prices: ${problem}`));
  const before = question.before === undefined ? undefined : await readJobObject(question.before);
  if (before?.ok === false) return refuse(...before.problems.map((problem) => `before: ${problem}`));
  return {
    job: job.job,
    prices: prices === undefined ? await shippedPrices() : indexPrices(prices.book),
    before: before?.job,
  };
}
