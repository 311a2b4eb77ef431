import type { UnitSystem } from '../../engine/job/job.ts';
import { type Dimension, type UnitId, units } from '../../tables/units/definitions.ts';
import { displayUnits, type Shown } from '../../tables/units/display.ts';
import { figureWithUnit } from './figure.ts';

/**
 * An SI value as its reader sees it everywhere else, where a formula works in another unit; undefined where the
 * formula's unit is the reader's, or the reader has none for it.
 */
export function asRead(value: number, unit: UnitId, system: UnitSystem): string | undefined {
  const { dimension } = units[unit];
  if (!isShown(dimension) || displayUnits[system][dimension].unit === unit) return undefined;
  return figureWithUnit(value, dimension, system);
}

function isShown(dimension: Dimension): dimension is Extract<Dimension, Shown> {
  return Object.hasOwn(displayUnits.us, dimension);
}
