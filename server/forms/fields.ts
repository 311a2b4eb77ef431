import { z } from 'zod';
import type { Quantity, QuantityDimension } from '../../engine/job/job.ts';
import { idPattern } from '../../engine/job/words.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';
import type { UnitId } from '../../tables/units/definitions.ts';

/** A line of text, trimmed; a field that was not sent is empty. */
export function optionalText(most = 200) {
  return z
    .string()
    .default('')
    .transform((text) => text.trim())
    .refine((text) => text.length <= most, { error: `This is longer than ${most} characters.` });
}

export function text(what: string, most = 200) {
  return optionalText(most).refine((value) => value !== '', { error: `Give ${what}.` });
}

/** A short name by which other parts refer to this one. */
export function idText(what: string) {
  return optionalText().refine((value) => idPattern.test(value), {
    error: `Give ${what}: letters, digits, - and _, beginning with a letter or digit, 64 at most.`,
  });
}

export function optionalId(what: string) {
  return optionalText().refine((value) => value === '' || idPattern.test(value), {
    error: `${what} may have letters, digits, - and _, beginning with a letter or digit, 64 at most.`,
  });
}

export function choice<const T extends string>(what: string, values: readonly T[]) {
  return z
    .string({ error: `Choose ${what}.` })
    .refine((value): value is T => (values as readonly string[]).includes(value), {
      error: `Choose ${what}: ${values.join(', ')}.`,
    });
}

export function optionalChoice<const T extends string>(what: string, values: readonly T[]) {
  return z
    .string()
    .default('')
    .refine((value): value is T | '' => value === '' || (values as readonly string[]).includes(value), {
      error: `Choose ${what}: ${values.join(', ')}, or nothing.`,
    });
}

export const tick = z
  .string()
  .optional()
  .transform((value) => value === 'yes');

/** A number without a unit takes the unit that stands beside its field. */
export function withFieldUnit(typed: string, unit: UnitId): string {
  return /^[-+−]?[\d\s./-]*\d[\d\s./-]*$/.test(typed) ? `${typed} ${unit}` : typed;
}

function toQuantity(
  typed: string,
  dimension: QuantityDimension,
  unit: UnitId,
  context: z.RefinementCtx,
): Quantity {
  const parsed = parseQuantity(withFieldUnit(typed, unit), dimension);
  if (parsed.ok) return parsed.quantity;
  context.addIssue({ code: 'custom', message: `${parsed.problem}.` });
  return z.NEVER;
}

/** A quantity that has to be given. */
export function quantity(dimension: QuantityDimension, unit: UnitId) {
  return optionalText(100).transform((typed, context) => toQuantity(typed, dimension, unit, context));
}

/** A quantity that may be left empty. */
export function optionalQuantity(dimension: QuantityDimension, unit: UnitId) {
  return optionalText(100).transform((typed, context) =>
    typed === '' ? undefined : toQuantity(typed, dimension, unit, context),
  );
}
