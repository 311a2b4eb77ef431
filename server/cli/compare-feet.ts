import type { ComparedScheme, UnitSystem } from '../../engine/index.ts';
import { inOrder } from '../../engine/takeoff/take-off-order.ts';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { showParts } from '../../tables/units/display.ts';

/** Developed length of one pipe, as shown, by the id of each scheme that has it. */
export interface PipeTotal {
  readonly material: MaterialId;
  readonly size: string;
  readonly lengths: ReadonlyMap<string, string>;
}

/** Every pipe that any of the schemes has, in the order of a take-off. */
export function feetTotals(compared: readonly ComparedScheme[], units: UnitSystem): PipeTotal[] {
  const totals = new Map<string, { material: MaterialId; size: string; lengths: Map<string, string> }>();
  for (const { id, price } of compared) {
    for (const { material, size, feet } of price.feet) {
      const key = `${material} ${size}`;
      const total = totals.get(key) ?? { material, size, lengths: new Map() };
      total.lengths.set(id, showParts(toSI(feet.toNumber(), 'ft'), 'length', units).value);
      totals.set(key, total);
    }
  }
  return [...totals.values()].sort(inOrder);
}
