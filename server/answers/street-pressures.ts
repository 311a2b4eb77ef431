import type { UnitSystem } from '../../engine/index.ts';
import { fromSI, toSI } from '../../tables/units/definitions.ts';

const steps = { us: { unit: 'psi', step: 5 }, si: { unit: 'kPa', step: 25 } } as const;

/**
 * Eight pressures at the street around that of the supply, Pa, rising: itself, and round figures of the reader's
 * unit, four below and three above; none that is nothing or less.
 */
export function streetPressures(supply: number, system: UnitSystem): number[] {
  const { unit, step } = steps[system];
  const own = fromSI(supply, unit);
  const below = Math.ceil(own / step - 1e-9) - 1;
  const above = Math.floor(own / step + 1e-9) + 1;
  const round = [below - 3, below - 2, below - 1, below, above, above + 1, above + 2]
    .map((count) => toSI(count * step, unit))
    .filter((pressure) => pressure > 0);
  return [...round, supply].sort((one, other) => one - other);
}
