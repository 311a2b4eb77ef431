import type { Quantity, UnitSystem } from '../job/job.ts';
import { parseQuantity } from '../units/parse-quantity.ts';

/** A place in the building, in whole steps of the grid: along the plan's two axes, and up from the job's datum. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type Axis = keyof Point;

/** The steps in which a layout is drawn: whole inches, or whole centimetres. */
export interface Grid {
  readonly system: UnitSystem;
  /** The nearest whole step to a length in m. */
  readonly snap: (si: number) => number;
  /** A length in steps as a person writes it, `12' 6"` or `3.81 m`. */
  readonly length: (steps: number) => Quantity;
  /** Whole steps in about so many feet, for the clearances that layouts keep. */
  readonly feet: (feet: number) => number;
}

const stepOf = { us: 0.0254, si: 0.01 } as const;
const stepsPerFoot = { us: 12, si: 30 } as const;

/**
 * A grid in the reader's system. Every place of a drawing lies on it, so that lengths and rises are whole inches or
 * centimetres, and add up along a path without rounding.
 */
export function gridOf(system: UnitSystem): Grid {
  return {
    system,
    snap: (si) => Math.round(si / stepOf[system]),
    length: (steps) => typedLength(system === 'us' ? feetAndInches(steps) : `${steps / 100} m`),
    feet: (feet) => Math.round(feet * stepsPerFoot[system]),
  };
}

function feetAndInches(steps: number): string {
  const inches = Math.abs(steps);
  const feet = Math.floor(inches / 12);
  const words = [
    ...(feet > 0 || inches === 0 ? [`${feet}'`] : []),
    ...(inches % 12 > 0 ? [`${inches % 12}"`] : []),
  ];
  return `${steps < 0 ? '-' : ''}${words.join(' ')}`;
}

function typedLength(typed: string): Quantity {
  const parsed = parseQuantity(typed, 'length');
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.quantity;
}
