import type { DemandMethod, UnitsDemand } from './demand.ts';
import { type DemandColumn, flowOfUnits } from './demand-table.ts';
import type { ServedFlows } from './gather-flows.ts';
import { unitsOf } from './unit-count.ts';

/** Demand by a table of units and its curve. */
export function unitsMethod(from: UnitsDemand): DemandMethod {
  return {
    counts: (fixture) => unitsOf(from.count, fixture) !== undefined,
    demand: (served) => ({
      from,
      flow: from.units.map((units, at) => flowOfRun(from, served, at, units)),
    }),
  };
}

/** The column that a run reads: the valve column where it serves a flushometer valve. */
export function columnOf(
  { table }: UnitsDemand,
  { valve }: Pick<ServedFlows, 'valve'>,
  at: number,
): DemandColumn {
  return valve[at] === 1 ? table.valve : table.tank;
}

/** Below the first row of the column the sum of the fixtures' own flows, up to that row's flow. */
function flowOfRun(from: UnitsDemand, served: ServedFlows, at: number, units: number): number {
  const column = columnOf(from, served, at);
  const table = flowOfUnits(column, units, from.table.roundUp);
  return table === 0 ? Math.min(served.ownSum[at]!, column.flow[0]!) : table;
}
