import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { Run, RunEnd, UnitSystem } from '../../engine/job/job.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { sizePattern } from '../../engine/job/words.ts';
import { joints, materials } from '../../tables/pipe/names.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { runMoves } from '../../views/parts/run-moves.tsx';
import { fileLimits } from '../document/file-limits.ts';
import { present } from '../edits/edited.ts';
import {
  choice,
  idText,
  optionalChoice,
  optionalId,
  optionalQuantity,
  optionalText,
  quantity,
  text,
  tick,
} from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';

export const lineForm = z.object({ line: text("the run as a line, e.g. 3/4 PEX 18'", bounds.lineLength) });

export const addRunForm = z.object({
  from: idText('the run that it comes from, or street'),
  id: optionalId('The name'),
  line: text("the run as a line, e.g. 3/4 PEX 18'", bounds.lineLength),
  insert: tick,
});

export const underForm = addRunForm.omit({ from: true, id: true });

export const moveForm = z.object({ move: choice('where the run goes', keys(runMoves)) });

function fieldsSchema(system: UnitSystem, previous: Run) {
  const length = displayUnits[system].length.unit;
  return z.object({
    id: idText('a name'),
    from: idText('the run that it comes from, or street'),
    size: optionalText().refine((size) => sizePattern.test(size), {
      error: 'Give a size such as 3/4 or 1-1/4.',
    }),
    material: choice('a material', keys(materials)),
    joint: optionalChoice('how it is joined', keys(joints)),
    length: quantity('length', length),
    rise: optionalQuantity('length', length),
    fittings: optionalText(bounds.lineLength).transform((words, context): Run['fittings'] => {
      const parsed = parseTail(words, undefined);
      if (
        parsed.ok &&
        parsed.run.end === undefined &&
        parsed.run.rise === undefined &&
        parsed.run.joint === undefined
      ) {
        return parsed.run.fittings;
      }
      context.addIssue({
        code: 'custom',
        message: parsed.ok ? 'Only fittings belong here, e.g. 2 ells 1 ball valve.' : `${parsed.problem}.`,
      });
      return z.NEVER;
    }),
    end: optionalText(bounds.lineLength).transform((words, context): RunEnd | undefined => {
      const parsed = parseTail(words, previous);
      if (
        parsed.ok &&
        parsed.run.fittings.length === 0 &&
        parsed.run.rise === undefined &&
        parsed.run.joint === undefined
      ) {
        return parsed.run.end;
      }
      context.addIssue({
        code: 'custom',
        message: parsed.ok
          ? 'Only the end belongs here, e.g. to RAIN hot, or then meter 3/4.'
          : `${parsed.problem}.`,
      });
      return z.NEVER;
    }),
    note: optionalText(fileLimits.note),
  });
}

/** Fittings and end are read as the tail of a whole line, so that both ways of typing a run know the same words. */
function parseTail(words: string, previous: Run | undefined) {
  return parseRunLine(`1/2 PEX 1 ft ${words}`, previous === undefined ? {} : { previous });
}

function keys<T extends object>(names: T): readonly (keyof T & string)[] {
  return Object.keys(names) as (keyof T & string)[];
}

/** The separate fields of a run. */
export function readRunFields(fields: FormFields, system: UnitSystem, previous: Run): FormResult<Run> {
  const result = readForm(fieldsSchema(system, previous), fields);
  if (!result.ok) return result;
  const { joint, note } = result.value;
  return {
    ok: true,
    value: present({
      ...previous,
      ...result.value,
      joint: joint === '' ? undefined : joint,
      note: note === '' ? undefined : note,
    }),
  };
}
