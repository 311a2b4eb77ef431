import type { Dimension, UnitId } from './definitions.ts';
import { fromSI, units } from './definitions.ts';

/** What is shown, where one dimension is read in several units: a pipe's bore is a length, but in inches. */
export type Shown =
  | Extract<
      Dimension,
      | 'pressure'
      | 'pressure gradient'
      | 'flow'
      | 'length'
      | 'velocity'
      | 'temperature'
      | 'volume'
      | 'flow coefficient'
      | 'fixture units'
    >
  | 'diameter';

/** The reader's system. */
export type DisplaySystem = 'us' | 'si';

export interface DisplayUnit {
  readonly unit: UnitId;
  readonly decimals: number;
}

/**
 * The unit and the digits in which each quantity is read: no finer than the trade's gauges and tapes can tell.
 * The only place where a number is rounded.
 */
export const displayUnits: {
  readonly [system in DisplaySystem]: { readonly [shown in Shown]: DisplayUnit };
} = {
  us: {
    pressure: { unit: 'psi', decimals: 1 },
    'pressure gradient': { unit: 'psi/100ft', decimals: 2 },
    flow: { unit: 'gpm', decimals: 1 },
    length: { unit: 'ft', decimals: 1 },
    diameter: { unit: 'in', decimals: 3 },
    velocity: { unit: 'ft/s', decimals: 1 },
    temperature: { unit: 'F', decimals: 0 },
    volume: { unit: 'gal', decimals: 2 },
    'flow coefficient': { unit: 'Cv', decimals: 2 },
    'fixture units': { unit: 'wsfu', decimals: 1 },
  },
  si: {
    pressure: { unit: 'kPa', decimals: 0 },
    'pressure gradient': { unit: 'kPa/m', decimals: 3 },
    flow: { unit: 'L/s', decimals: 2 },
    length: { unit: 'm', decimals: 2 },
    diameter: { unit: 'mm', decimals: 1 },
    velocity: { unit: 'm/s', decimals: 2 },
    temperature: { unit: 'C', decimals: 1 },
    volume: { unit: 'L', decimals: 2 },
    'flow coefficient': { unit: 'Cv', decimals: 2 },
    'fixture units': { unit: 'wsfu', decimals: 1 },
  },
};

/** An SI value in the reader's unit, rounded, and the unit's symbol; a value that rounds to nothing has no sign. */
export function showParts(
  si: number,
  shown: Shown,
  system: DisplaySystem,
): { value: string; symbol: string } {
  const { unit, decimals } = displayUnits[system][shown];
  const value = fromSI(si, unit).toFixed(decimals);
  return { value: Number(value) === 0 ? value.replace('-', '') : value, symbol: units[unit].symbol };
}

/** An SI value as the reader sees it: `41.3 psi`. */
export function show(si: number, shown: Shown, system: DisplaySystem): string {
  const { value, symbol } = showParts(si, shown, system);
  return `${value} ${symbol}`;
}
