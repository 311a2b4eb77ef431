import { citePoint } from '../../tables/look-up.ts';
import type { Cited, CurveTable } from '../../tables/table.ts';
import type { Demand } from './demand.ts';
import { rowsRead } from './demand-table.ts';
import type { ServedFlows } from './gather-flows.ts';
import { columnOf } from './units-method.ts';

/** The published values that the demand of a run is read from, given what the run serves. */
export function readCites({ from }: Demand, served: Pick<ServedFlows, 'valve'>, at: number): Cited[] {
  const column = columnOf(from, served, at);
  const units = from.units[at]!;
  const rows = units < column.units[0]! ? [0] : rowsRead(column, units, from.table.roundUp);
  return rows.map((row) => citePoint(column.from, row));
}

/** The published values by which the fixtures count that a run itself adds. */
export function addedCites({ from }: Demand, at: number): Cited[] {
  return from.sources[at]!.map((source) => {
    if (source.what === 'inlet') return source.each;
    return source.what === 'both sides' ? source.total : source.value;
  });
}

/** More units at the first run than the curve of the method lists. */
export function beyondTable({
  from,
}: Demand): { units: number; limit: number; curve: CurveTable } | undefined {
  const limit = from.table.tank.units.at(-1)!;
  const units = from.units[0]!;
  return units > limit ? { units, limit, curve: from.table.tank.from } : undefined;
}
