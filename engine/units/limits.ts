import type { UnitId } from '../../tables/units/definitions.ts';
import { toSI } from '../../tables/units/definitions.ts';
import type { QuantityDimension } from '../job/job.ts';

interface Limit {
  readonly unit: UnitId;
  readonly least: number;
  readonly most: number;
  /** Spellings that a person is offered, the commonest first. */
  readonly offered: readonly string[];
  readonly example: string;
}

/**
 * What a typed quantity may be at most, by dimension: wide enough for any house or small building, narrow enough
 * to catch a slipped decimal point or a wrong unit before it is computed with. Common practice, no source:
 * 400 psi is above the rating of any pipe here; 3 km is beyond any service line; 2000 gpm would need an 8 inch main;
 * at 100 ft/s a pipe would not last; water is liquid from 32 to 212 F; 10 psi/ft burns a street's pressure in one
 * room. What one field asks beyond this (a length is not negative) is said where the field is.
 */
export const limits: { readonly [dimension in QuantityDimension]: Limit } = {
  pressure: { unit: 'psi', least: 0, most: 400, offered: ['psi', 'kPa', 'bar'], example: '62 psi' },
  'pressure gradient': {
    unit: 'psi/ft',
    least: 0,
    most: 10,
    offered: ['psi/ft', 'kPa/m'],
    example: '0.433 psi/ft',
  },
  flow: { unit: 'gpm', least: 0, most: 2000, offered: ['gpm', 'L/s', 'L/min'], example: '2.5 gpm' },
  length: { unit: 'm', least: -3000, most: 3000, offered: ['ft', 'in', 'm', 'mm'], example: '12 ft 6 in' },
  velocity: { unit: 'ft/s', least: 0, most: 100, offered: ['ft/s', 'm/s'], example: '8 ft/s' },
  temperature: { unit: 'F', least: 32, most: 212, offered: ['F', 'C'], example: '140 F' },
  'flow coefficient': { unit: 'Cv', least: 0, most: 10_000, offered: ['Cv'], example: '2.3 Cv' },
};

/** Whether an SI value is within the limits of its dimension; NaN is not. */
export function withinLimits(si: number, dimension: QuantityDimension): boolean {
  const { unit, least, most } = limits[dimension];
  // A limit that is typed in another unit may land a last digit beyond it.
  const slack = 1e-12 * Math.abs(toSI(most, unit));
  return si >= toSI(least, unit) - slack && si <= toSI(most, unit) + slack;
}

/** `a length in ft, in, m or mm, such as "12 ft 6 in"`. */
export function expectedQuantity(dimension: QuantityDimension): string {
  const { offered, example } = limits[dimension];
  const last = offered[offered.length - 1];
  const list = offered.length === 1 ? last : `${offered.slice(0, -1).join(', ')} or ${last}`;
  return `a ${dimension} in ${list}, such as "${example}"`;
}
