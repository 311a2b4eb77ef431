import type { CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';

/** Fixture units against flow (m3/s), rows rising. */
export interface DemandColumn {
  /** As the steps call it. */
  readonly title: string;
  readonly units: Float64Array;
  readonly flow: Float64Array;
  /** For each whole number of units, the first row that holds at least so many: where a search starts. */
  readonly rowFrom: Uint16Array;
  readonly from: CurveTable;
}

/** The demand table of a basis: the tank column, and the column for runs that serve flushometer valves. */
export interface DemandTable {
  readonly tank: DemandColumn;
  readonly valve: DemandColumn;
  readonly roundUp: boolean;
}

/**
 * A printed column in SI, ready to be read.
 *
 * @param title the title of its table where it is left out
 */
export function demandColumnOf(table: CurveTable, title: string = table.title): DemandColumn {
  const units = Float64Array.from(table.points, ([x]) => x);
  const rowFrom = new Uint16Array(Math.floor(units.at(-1)!) + 1);
  let row = 0;
  for (let whole = 0; whole < rowFrom.length; whole++) {
    while (units[row]! < whole) row++;
    rowFrom[whole] = row;
  }
  return {
    title,
    units,
    flow: Float64Array.from(table.points, ([, y]) => toSI(y, table.y)),
    rowFrom,
    from: table,
  };
}

/** Index of the first row that holds at least `units`, 0 or more; the number of rows where none does. */
export function rowAtOrAbove({ units: rows, rowFrom }: DemandColumn, units: number): number {
  let row = rowFrom[Math.floor(units)] ?? rows.length;
  while (rows[row]! < units) row++;
  return row;
}

/** The rows that {@link flowOfUnits} reads for as many units as the first row or more: one, or two around a line. */
export function rowsRead(
  column: DemandColumn,
  units: number,
  roundUp: boolean,
): readonly [number] | readonly [number, number] {
  const last = column.units.length - 1;
  const at = rowAtOrAbove(column, units);
  if (at <= last && (column.units[at] === units || roundUp)) return [at];
  const above = Math.min(at, last);
  return [above - 1, above];
}

/**
 * Design flow of `units` by a column of the demand table, m3/s; 0 below the first row, where the fixtures' own
 * flows decide (see design-flow.ts). Between rows a straight line, or the next row up where the basis rounds. Above the
 * last row the last step of the table is carried on.
 */
export function flowOfUnits(column: DemandColumn, units: number, roundUp: boolean): number {
  const { units: rows, flow } = column;
  if (units < rows[0]!) return 0;
  const [below, above] = rowsRead(column, units, roundUp);
  if (above === undefined) return flow[below]!;
  const slope = (flow[above]! - flow[below]!) / (rows[above]! - rows[below]!);
  return flow[below]! + slope * (units - rows[below]!);
}
