import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { Run } from '../../engine/job/job.ts';
import { parseRunLine } from '../../engine/job/parse-run-line.ts';
import { sizePattern } from '../../engine/job/words.ts';
import { fittings, joints, materials } from '../../tables/pipe/names.ts';
import type { endSchema } from './schema-ends.ts';
import type { ListOf } from './schema-parts.ts';
import { choiceOf, fieldsOf, idOf, keysOf, noteOf, patternOf, quantityOf, wholeOf } from './schema-parts.ts';

const id = idOf('id of the run');
const from = idOf('id of the run that it comes from, or street');
const note = z.exactOptional(noteOf('note to the run'));

/** A run in the shorthand of trade words. */
const lineRun = fieldsOf({
  id,
  from,
  line: z.string({ error: `a run in trade words, such as "3/4 PEX 18' up 9' 2 ells"` }).meta({
    description: 'the run in trade words: size, material, length, up or down, fittings, what it ends in',
  }),
  note,
}).transform(({ line, ...run }, context): Run => {
  const parsed = parseRunLine(line);
  if (!parsed.ok) {
    context.addIssue({ code: 'custom', path: ['line'], message: parsed.problem });
    return z.NEVER;
  }
  return { ...run, ...parsed.run };
});

/** A run, either as a line or as fields. */
export function runSchema(listOf: ListOf, end: ReturnType<typeof endSchema>) {
  const fitting = fieldsOf({
    kind: choiceOf(keysOf(fittings), 'kind of the fitting'),
    count: wholeOf(bounds.fittingCount, 'how many of it'),
  });
  const fieldRun = fieldsOf({
    id,
    from,
    size: patternOf(sizePattern, 'a nominal size, such as "3/4"'),
    material: choiceOf(keysOf(materials), 'material of the pipe'),
    joint: z.exactOptional(
      choiceOf(keysOf(joints), "how it is joined, where it is not the material's usual way"),
    ),
    length: quantityOf('length', 'developed length, the risen part included', 'not below zero'),
    rise: z.exactOptional(quantityOf('length', 'height gained from start to end; negative goes down')),
    fittings: listOf(fitting, bounds.fittingsPerRun, 'counted fittings'),
    end: z.exactOptional(end),
    note,
  });
  return z.union([lineRun, fieldRun], {
    error: 'a run, with a line or with size, material, length and fittings',
  });
}
