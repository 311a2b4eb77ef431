import { sources } from '../../tables/sources.ts';
import type { CurveTable } from '../../tables/table.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import type { OwnDemand, UnitSystem } from '../job/job.ts';

/** A job's own demand table as a table like the published ones, in the reader's unit of flow. */
export function ownCurve({ name, points }: OwnDemand, system: UnitSystem): CurveTable {
  const { unit } = displayUnits[system].flow;
  return {
    kind: 'curve',
    id: 'job/demand',
    title: name,
    source: sources['job-table'],
    at: { checkedOn: '' },
    verified: 'given',
    x: 'wsfu',
    y: unit,
    points: points.map(({ units, flow }) => [units, fromSI(flow.si, unit)]),
  };
}
