import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { DemandPoint } from '../../engine/job/job.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { fileLimits } from './file-limits.ts';
import type { ListOf } from './schema-parts.ts';
import { fieldsOf, quantityOf, textOf } from './schema-parts.ts';

const point = fieldsOf({
  units: z
    .number({ error: 'fixture units, a number above zero' })
    .positive({ error: 'fixture units, a number above zero' })
    .max(1e6, { error: 'fixture units, a number up to 1000000' })
    .meta({ description: 'fixture units of the profile' }),
  flow: quantityOf('flow', 'flow of so many fixture units', 'above zero'),
});

/** Rows of a demand table: two at least, units rising, flow never falling. */
function pointsSchema(listOf: ListOf) {
  return listOf(point, fileLimits.pointsOfCurve, 'rows of a demand table').superRefine((points, context) => {
    const refuse = (path: (string | number)[], message: string): void =>
      context.addIssue({ code: 'custom', path, message });
    if (points.length < 2) {
      refuse(
        [],
        `${points.length === 0 ? 'no row' : 'one row'} came; expected at least two rows of units and flow`,
      );
    }
    points.forEach((here: DemandPoint, index) => {
      const before = points[index - 1];
      if (before === undefined) return;
      if (here.units <= before.units) {
        refuse(
          [index, 'units'],
          `${here.units} is not more than ${before.units} before it; expected units that rise from row to row`,
        );
      }
      if (here.flow.si < before.flow.si) {
        refuse(
          [index, 'flow'],
          `${shorten(here.flow.typed)} is less than ${shorten(before.flow.typed)} before it; expected flows that never fall`,
        );
      }
    });
  });
}

/** The demand method of a basis, with what its source leaves open. */
export function demandSchema(listOf: ListOf) {
  const method = <Id extends string>(id: Id) => z.literal(id);
  return z
    .discriminatedUnion(
      'method',
      [
        fieldsOf({ method: method('code-table') }),
        fieldsOf({ method: method('en-806-3') }),
        fieldsOf({
          method: method('own-table'),
          name: textOf(bounds.nameLength, 'name of the demand table'),
          points: pointsSchema(listOf),
        }),
      ],
      { error: 'a demand method: code-table, en-806-3 or own-table' },
    )
    .meta({ description: "how flow is found from fixtures; the profile's own method where it is left out" });
}
