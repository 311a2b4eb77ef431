import type { CellStory, Cited, CurveTable, GridTable, ValueTable } from './table.ts';
import { toSI } from './units/definitions.ts';

/**
 * One cell of a grid table with its citation; SI is derived here and nowhere else.
 *
 * @throws when the table has no such cell: callers ask {@link hasCell} where a blank is possible.
 */
export function lookUp<R extends string, C extends string>(
  table: GridTable<R, C>,
  row: NoInfer<R>,
  column: NoInfer<C>,
): Cited {
  const line = table.rows[row];
  const printed = line.values[column];
  if (printed === undefined) throw new Error(`${table.id} has no value at ${row}, ${column}`);
  const unit = table.columns[column];
  const { source, at, verified }: CellStory = line.cells?.[column] ?? {};
  return {
    value: toSI(printed, unit),
    printed,
    unit,
    table,
    row,
    column,
    ...(source === undefined ? {} : { source }),
    ...(at === undefined ? {} : { at }),
    verified: verified ?? line.verified ?? table.verified,
    ...(line.note === undefined ? {} : { note: line.note }),
  };
}

/** Whether the table prints a value there; keys that come from a document are safe to ask for. */
export function hasCell(table: GridTable, row: string, column: string): boolean {
  return (
    Object.hasOwn(table.rows, row) &&
    Object.hasOwn(table.columns, column) &&
    table.rows[row]?.values[column] !== undefined
  );
}

/** The point of a curve at `index` with its citation; the value is y. */
export function citePoint(table: CurveTable, index: number): Cited {
  const point = table.points[index];
  if (point === undefined) throw new Error(`${table.id} has no point ${index}`);
  return {
    value: toSI(point[1], table.y),
    printed: point[1],
    unit: table.y,
    table,
    row: `${point[0]}`,
    verified: table.rowVerified?.[index] ?? table.verified,
  };
}

/** A single published figure with its citation. */
export function citeValue(table: ValueTable): Cited {
  return {
    value: toSI(table.printed, table.unit),
    printed: table.printed,
    unit: table.unit,
    table,
    verified: table.verified,
    ...(table.note === undefined ? {} : { note: table.note }),
  };
}
