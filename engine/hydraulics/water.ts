import type { CurveTable } from '../../tables/table.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';
import { waterDensity, waterViscosity } from '../../tables/water/liquid-water.ts';

/** Liquid water at a temperature, SI. */
export interface Water {
  readonly density: number;
  readonly viscosity: number;
}

/** Where a temperature falls in a table of water: the two rows around it and the share of the way between. */
export interface Between {
  readonly below: number;
  readonly above: number;
  readonly share: number;
}

/**
 * The rows of a curve around a value of x (SI), for a straight line between them; outside the table the end row.
 */
export function rowsAround(table: CurveTable, x: number): Between {
  const printed = fromSI(x, table.x);
  const { points } = table;
  const above = points.findIndex(([at]) => at >= printed);
  if (above === 0) return { below: 0, above: 0, share: 0 };
  if (above === -1) return { below: points.length - 1, above: points.length - 1, share: 0 };
  const from = points[above - 1]![0];
  return { below: above - 1, above, share: (printed - from) / (points[above]![0] - from) };
}

/** y of a printed curve at x, both SI, by a straight line between its rows. */
export function readCurve(table: CurveTable, x: number): number {
  const { below, above, share } = rowsAround(table, x);
  const from = toSI(table.points[below]![1], table.y);
  return from + share * (toSI(table.points[above]![1], table.y) - from);
}

/** Density and viscosity of liquid water, read from the table between its rows. @param temperature K */
export function waterAt(temperature: number): Water {
  return {
    density: readCurve(waterDensity, temperature),
    viscosity: readCurve(waterViscosity, temperature),
  };
}
