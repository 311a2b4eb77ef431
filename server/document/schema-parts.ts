import { z } from 'zod';
import type { Quantity, QuantityDimension } from '../../engine/job/job.ts';
import { idPattern } from '../../engine/job/words.ts';
import { expectedQuantity } from '../../engine/units/limits.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { fileLimits } from './file-limits.ts';

/**
 * The message of every part is what was expected, as a noun phrase; `tellIssue` puts it behind what came. A message
 * that is a whole clause of its own is given as a custom issue.
 */

/** Text of one line: no control characters, no halves of surrogate pairs, which no file can hold. */
export function textOf(most: number, what: string) {
  const error = `${what}, a text of 1 to ${most} characters on one line`;
  return z
    .string({ error })
    .min(1, { error })
    .max(most, { error })
    .regex(/^[^\p{Cc}\p{Cs}]*$/u, { error })
    .meta({ description: what });
}

/** Text that may have several lines. */
export function noteOf(what: string) {
  const error = `${what}, a text of at most ${fileLimits.note} characters`;
  return z
    .string({ error })
    .max(fileLimits.note, { error })
    .regex(/^(?:[^\p{Cc}\p{Cs}]|[\n\r\t])*$/u, { error })
    .meta({ description: what });
}

/** The id by which other parts of a document name this one. */
export function idOf(what: string) {
  const error = `${what}: 1 to 64 letters, digits, - and _, the first a letter or digit`;
  return z.string({ error }).regex(idPattern, { error }).meta({ description: what });
}

/** A text of one pattern, such as a pipe size. */
export function patternOf(pattern: RegExp, what: string) {
  return z.string({ error: what }).regex(pattern, { error: what }).meta({ description: what });
}

/** One of a few words. @throws when there is none to choose from */
export function choiceOf<Id extends string>(ids: readonly Id[], what: string) {
  const [first, ...others] = ids;
  if (first === undefined) throw new Error(`no choices for ${what}`);
  return z
    .enum([first, ...others], { error: `${what}, one of ${ids.join(', ')}` })
    .meta({ description: what });
}

/** True or false; words and numbers that may mean it are refused. */
export function yesOrNo(what: string) {
  return z.boolean({ error: `true or false: ${what}` }).meta({ description: what });
}

/** A whole number within bounds, both included. */
export function wholeOf({ least, most }: { readonly least: number; readonly most: number }, what: string) {
  const error = `${what}, a whole number from ${least} to ${most}`;
  return z.int({ error }).min(least, { error }).max(most, { error }).meta({ description: what });
}

/** The keys of a table as choices. */
export function keysOf<T extends object>(table: T): (keyof T & string)[] {
  return Object.keys(table) as (keyof T & string)[];
}

/** An object with these fields and no others. */
export function fieldsOf<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, { error: `an object with the fields ${Object.keys(shape).join(', ')}` });
}

/** A quantity as typed, read into its SI value. */
export function quantityOf(
  dimension: QuantityDimension,
  what: string,
  sign: 'any' | 'not below zero' | 'above zero' = 'any',
) {
  const expected = expectedQuantity(dimension);
  return z
    .string({ error: `${expected}, as text` })
    .max(fileLimits.quantity, { error: expected })
    .transform((text, context): Quantity => {
      const parsed = parseQuantity(text, dimension);
      if (!parsed.ok) {
        context.addIssue({ code: 'custom', message: parsed.problem });
        return z.NEVER;
      }
      const { si } = parsed.quantity;
      if ((sign === 'above zero' && si <= 0) || (sign === 'not below zero' && si < 0)) {
        context.addIssue({
          code: 'custom',
          message: `${shorten(text)} is not ${sign.replace('not below', 'at or above')}; expected ${expected}`,
        });
        return z.NEVER;
      }
      return parsed.quantity;
    })
    .meta({ description: `${what}; ${expected}${sign === 'any' ? '' : `, ${sign}`}` });
}

/** Makes the schema of a list; reading and describing a job each have their own way. */
export type ListOf = <Entry extends z.ZodType>(
  entry: Entry,
  most: number,
  what: string,
) => z.ZodType<z.output<Entry>[], unknown>;

/** A list as zod knows it: every entry and every problem. For the description of the format. */
export const describedList: ListOf = (entry, most, what) =>
  z
    .array(entry, { error: what })
    .max(most)
    .meta({ description: `${what}, at most ${most}` });

/**
 * A list that is refused for its length before an entry is read, and in which reading stops after
 * {@link fileLimits.problemsSought} problems, so that a file of nothing but faults costs little.
 */
export const readList: ListOf = <Entry extends z.ZodType>(entry: Entry, most: number, what: string) =>
  z.array(z.unknown(), { error: `a list of ${what}` }).transform((entries, context) => {
    const read: z.output<Entry>[] = [];
    if (entries.length > most) {
      context.addIssue({
        code: 'custom',
        message: `a list of ${entries.length} entries came; expected at most ${most} ${what}`,
      });
      return z.NEVER;
    }
    let found = 0;
    for (let index = 0; index < entries.length && found < fileLimits.problemsSought; index++) {
      const result = entry.safeParse(entries[index]);
      if (result.success) {
        read.push(result.data);
        continue;
      }
      for (const issue of result.error.issues) {
        context.issues.push({
          ...issue,
          path: [index, ...issue.path],
          input: undefined,
        } as z.core.$ZodRawIssue);
        found++;
      }
    }
    return read;
  });
