import { z } from 'zod';
import { bounds } from '../../engine/job/bounds.ts';
import type { DemandChoice, DemandPoint, OwnDemand, UnitSystem } from '../../engine/job/job.ts';
import { parseQuantity } from '../../engine/units/parse-quantity.ts';
import { shorten } from '../../engine/units/shorten.ts';
import { type ProfileId, profiles } from '../../tables/profiles.ts';
import type { UnitId } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { fileLimits } from '../document/file-limits.ts';
import { choice, optionalText, withFieldUnit } from './fields.ts';
import type { FormFields } from './form-fields.ts';
import { type FormResult, readForm } from './read-form.ts';

const methods = ['', 'code-table', 'en-806-3', 'own-table'] as const;

/**
 * The demand method of a basis; undefined leaves it to the profile. What a method leaves open and the form did not send,
 * since another method stood there, begins with a usual value; a table of the job's own begins as that of the profile.
 */
export function readDemandForm(
  fields: FormFields,
  system: UnitSystem,
  profile: ProfileId,
): FormResult<DemandChoice | undefined> {
  const chosen = readForm(z.object({ demandMethod: choice('a demand method', methods).default('') }), fields);
  if (!chosen.ok) return chosen;
  const method = chosen.value.demandMethod;
  switch (method) {
    case '':
      return { ok: true, value: undefined };
    case 'own-table':
      return fields.demandTable === undefined
        ? { ok: true, value: ownTableOf(profile) }
        : readForm(ownTable(displayUnits[system].flow.unit), fields);
    default:
      return { ok: true, value: { method } };
  }
}

/** The table of a profile, to be changed. */
function ownTableOf(profile: ProfileId): OwnDemand {
  const { demandTank } = profiles[profile];
  return {
    method: 'own-table',
    name: `Own table, from ${profiles[profile].title} ${profiles[profile].edition}`,
    points: demandTank.points.map(([units, flow]) => ({ units, flow: pointFlow(`${flow} ${demandTank.y}`) })),
  };
}

function pointFlow(typed: string): DemandPoint['flow'] {
  const parsed = parseQuantity(typed, 'flow');
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.quantity;
}

function ownTable(unit: UnitId) {
  return z
    .object({
      demandTableName: optionalText(bounds.nameLength),
      demandTable: z.string().transform((text, context): DemandPoint[] => {
        const points: DemandPoint[] = [];
        for (const line of text.split('\n').map((each) => each.trim())) {
          if (line === '') continue;
          const point = readPoint(line, unit);
          const problem = typeof point === 'string' ? point : orderProblem(points.at(-1), point);
          if (problem !== undefined) {
            context.addIssue({ code: 'custom', message: problem });
            return z.NEVER;
          }
          if (typeof point !== 'string') points.push(point);
        }
        if (points.length < 2 || points.length > fileLimits.pointsOfCurve) {
          const message = `Give 2 to ${fileLimits.pointsOfCurve} rows, each fixture units and their flow: 10 14.6.`;
          context.addIssue({ code: 'custom', message });
        }
        return points;
      }),
    })
    .transform(
      ({ demandTableName, demandTable }): OwnDemand => ({
        method: 'own-table',
        name: demandTableName === '' ? 'Own table' : demandTableName,
        points: demandTable,
      }),
    );
}

/** A row such as `10 14.6` or `10, 0.9 L/s`, or what is wrong with it. */
function readPoint(line: string, unit: UnitId): DemandPoint | string {
  const row = /^(\d+(?:\.\d+)?)[\s,;]+(.+)$/.exec(line);
  if (row === null) return `${shorten(line)} is no row; expected fixture units and their flow: 10 14.6.`;
  const units = Number(row[1]);
  const flow = parseQuantity(withFieldUnit(row[2]!, unit), 'flow');
  if (!flow.ok) return `${flow.problem}.`;
  if (units <= 0 || units > 1e6 || flow.quantity.si <= 0) {
    return `${shorten(line)} is no row; expected units and a flow above zero, the units at most 1000000.`;
  }
  return { units, flow: flow.quantity };
}

function orderProblem(before: DemandPoint | undefined, point: DemandPoint): string | undefined {
  if (before === undefined || (point.units > before.units && point.flow.si >= before.flow.si))
    return undefined;
  return `The row at ${point.units} units does not follow that at ${before.units}; expected units that rise and flows that never fall.`;
}
