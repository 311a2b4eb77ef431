import { citePoint } from '../../tables/look-up.ts';
import type { Cited, CurveTable } from '../../tables/table.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { UnitsDemand } from '../demand/demand.ts';
import { rowsRead } from '../demand/demand-table.ts';
import { columnOf } from '../demand/units-method.ts';
import type { Report } from '../network/report.ts';
import { between, readOff } from './arithmetic.ts';
import { explainUnits, type UnitName } from './explain-units.ts';
import { belowTable } from './flow-formula.ts';
import { cited } from './leaf.ts';
import type { Explained } from './step.ts';
import type { Worksheet } from './worksheet.ts';

/** Fixture units of the profile, as the steps call them. */
export const fixtureUnitName: UnitName = { quantity: 'units', title: 'Fixture units', unit: 'wsfu' };
const loadingUnitName: UnitName = { quantity: 'loading-units', title: 'Loading units', unit: 'lu' };

/** The units that the table is read by. Fixture units of the profile have their step whatever the method. */
export function explainTableUnits(
  report: Report,
  at: number,
  sheet: Worksheet,
  from: UnitsDemand,
): Explained {
  if (from.unit === 'lu') return explainUnits(report, at, sheet, loadingUnitName, from);
  return { from: 'step', value: from.units[at]!, step: `${report.network.runs[at]!.id}.units` };
}

/** Units to flow: between rows, up to the next row, or below the first row by the fixtures' own flows. */
export function explainTable(
  report: Report,
  at: number,
  sheet: Worksheet,
  from: UnitsDemand,
  { own, units }: { readonly own: Explained; readonly units: Explained },
): Explained {
  const id = `${report.network.runs[at]!.id}.demand`;
  const column = columnOf(from, report.solution, at);
  const table = column.from;
  if (units.value < column.units[0]!) {
    return sheet.apply(id, belowTable, { S: own, F: cited(citePoint(table, 0)) });
  }
  const [row, above] = rowsRead(column, units.value, from.table.roundUp);
  if (above === undefined) {
    const title = from.table.roundUp ? `${column.title}, next row up` : column.title;
    const formula = readOff('demand-row', title, table.y, 'flow of the row');
    return sheet.apply(id, formula, { y: cited(citePoint(table, row)) });
  }
  const formula = between(
    'demand',
    column.title,
    { unit: from.unit, meaning: from.unit === 'wsfu' ? 'fixture units' : 'loading units' },
    { unit: table.y, meaning: 'flow' },
  );
  return sheet.apply(id, formula, {
    x: units,
    'x₁': xOf(table, row),
    'y₁': cited(citePoint(table, row)),
    'x₂': xOf(table, above),
    'y₂': cited(citePoint(table, above)),
  });
}

/** x of a table's row. */
export function xOf(table: CurveTable, row: number): Explained {
  const point: Cited = citePoint(table, row);
  const x = table.points[row]![0];
  return {
    from: 'table',
    value: toSI(x, table.x),
    cite: { ...point, value: toSI(x, table.x), printed: x, unit: table.x },
  };
}
