import { z } from 'zod';
import type { Scheme } from '../../engine/job/job.ts';
import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import type { SizingQuestion } from '../../views/sizing.ts';
import { tick } from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';
import { splitIds } from './run-ids.ts';

/** Room for the names of every run of the largest scheme that is sized. */
const mostText = 60_000;

const ids = z
  .string()
  .default('')
  .refine((text) => text.length <= mostText, {
    error: `This is longer than ${mostText} characters.`,
  });

/** What may be decided; the runs named have to be the scheme's, and a trunk's have to feed each other. */
export function readSizingForm(fields: FormFields, { runs }: Scheme): FormResult<SizingQuestion> {
  const known = new Map(runs.map((run) => [run.id, run]));
  const runIds = (typed: readonly string[], context: z.RefinementCtx) => {
    const wrong = typed.filter((id) => !known.has(id));
    if (wrong.length > 0) {
      const told = wrong.slice(0, 5).map((id) => id.slice(0, 64));
      const more = wrong.length > 5 ? ` and ${wrong.length - 5} more` : '';
      context.addIssue({
        code: 'custom',
        message: `There is no run ${told.join(', ')}${more} in this scheme; give the names of its runs, with commas between them.`,
      });
    }
    return typed;
  };
  const schema = z.object({
    keep: ids.transform((typed, context) => runIds(splitIds(typed), context)),
    trunk: ids.transform((typed, context) => {
      const trunks = typed
        .split(';')
        .map(splitIds)
        .filter((trunk) => trunk.length > 0);
      runIds(trunks.flat(), context);
      for (const trunk of trunks) {
        const together = new Set(trunk);
        const heads = trunk.filter((id) => !together.has(known.get(id)?.from ?? ''));
        if (heads.length > 1 && heads.every((id) => known.has(id))) {
          context.addIssue({
            code: 'custom',
            message: `Runs ${heads.slice(0, 5).join(', ')} do not feed each other; put a semicolon between two trunks.`,
          });
        }
      }
      return trunks;
    }),
    notLarger: tick,
    material: z
      .string()
      .default('')
      .transform(splitIds)
      .refine(
        (names): names is readonly MaterialId[] => names.every((name) => Object.hasOwn(materials, name)),
        {
          error: `Choose among ${Object.keys(materials).join(', ')}, or nothing for each run's own.`,
        },
      ),
  });
  const read = readForm(schema, fields);
  if (!read.ok) return read;
  const { keep, trunk, notLarger, material } = read.value;
  return { ok: true, value: { keep, trunks: trunk, notLarger, materials: material } };
}
