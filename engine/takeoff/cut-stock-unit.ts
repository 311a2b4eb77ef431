/**
 * Cut lists are added up in whole units of 1/80 mm, in which a sixteenth of an inch (127) and a tenth of a millimetre
 * (8) are both whole numbers: sums are exact, and two half sticks fill a stick in either system.
 */
export const unitsPerMetre = 80_000;

/** A length in m as the nearest whole number of units; off by at most 0.006 mm. */
export function toCutUnits(metres: number): number {
  return Math.round(metres * unitsPerMetre);
}

/** Units as m. */
export function fromCutUnits(cutUnits: number): number {
  return cutUnits / unitsPerMetre;
}
