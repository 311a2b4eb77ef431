import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';

const name = z
  .string({ error: 'A price book needs a name.' })
  .trim()
  .min(1, { error: 'A price book needs a name.' })
  .max(bounds.nameLength, { error: `A name has at most ${bounds.nameLength} characters.` })
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, { error: 'A name stands on one line.' });

/** A new price book: its name, and the book that it is a copy of, or `empty`. */
export const newBookForm = z.object({ name, start: z.string({ error: 'Choose what to start from.' }) });

/** The head of a price book. */
export const aboutBookForm = z.object({
  name,
  source: name.refine((text) => text !== '', { error: 'Say where the prices come from.' }),
  currency: z
    .string({ error: 'Three capital letters, such as USD.' })
    .trim()
    .regex(/^[A-Z]{3}$/, { error: 'Three capital letters, such as USD.' }),
  effective: z.iso.date({ error: 'A day such as 2026-11-25.' }),
  invented: z
    .literal('yes')
    .optional()
    .transform((tick) => tick === 'yes'),
});
