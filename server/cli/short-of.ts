import type { InletResult, UnitSystem } from '../../engine/index.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import { displayUnits } from '../../tables/units/display.ts';
import { decimalsApart } from '../../views/text/figure.ts';

/** What is left at an inlet, what it needs, and the one less the other: bare figures in the reader's unit. */
export interface LeftAndNeeded {
  readonly left: string;
  readonly needed: string;
  readonly margin: string;
}

/** Figures of an inlet in as many decimals as it takes to see that it is short, where it is. */
export function leftAndNeeded({ residual, margin, inlet }: InletResult, system: UnitSystem): LeftAndNeeded {
  const { unit, decimals } = displayUnits[system].pressure;
  const { requiredPressure } = inlet;
  const digits = margin < 0 ? decimalsApart(residual, requiredPressure, 'pressure', system) : decimals;
  const write = (value: number): string => fromSI(value, unit).toFixed(digits);
  return { left: write(residual), needed: write(requiredPressure), margin: write(margin) };
}
