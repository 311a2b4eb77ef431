import { hasCell, lookUp } from '../../tables/look-up.ts';
import { fittingLengths } from '../../tables/pipe/fitting-lengths.ts';
import { insertCoefficients } from '../../tables/pipe/insert-coefficients.ts';
import { lossCoefficients } from '../../tables/pipe/loss-coefficients.ts';
import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { Cited } from '../../tables/table.ts';
import type { Basis } from '../job/job.ts';
import { nominalInches } from './nominal-inches.ts';
import { risingSizes } from './rising-sizes.ts';

/** How one fitting loses: as metres of its pipe, or K velocity heads where no table prints a length. */
export type FittingLoss =
  | { readonly by: 'equivalent length'; readonly each: Cited }
  | { readonly by: 'K'; readonly each: Cited };

/** What a basis counts fittings by; what one kind of table lacks is taken from the other. */
export type FittingsBy = NonNullable<Basis['fittings']>;

/**
 * The loss of one fitting. By equivalent length: the first table of the material and joint that prints its size, else
 * its K. By loss coefficient: its K, which stands in the tables for every kind of fitting.
 */
export function fittingLoss(
  material: MaterialId,
  joint: JointId,
  size: string,
  kind: FittingKind,
  by: FittingsBy = 'equivalent-length',
): FittingLoss {
  if (by === 'equivalent-length') {
    for (const table of fittingLengths[material][joint] ?? []) {
      if (hasCell(table, size, kind)) return { by: 'equivalent length', each: lookUp(table, size, kind) };
    }
  }
  return { by: 'K', each: coefficient(joint, size, kind) };
}

/** K of the joint's own fittings in the next smaller listed size, or the smallest; else K of the kind. */
function coefficient(joint: JointId, size: string, kind: FittingKind): Cited {
  const own = insertCoefficients[joint];
  if (own !== undefined) {
    const sizes = risingSizes(own.rows).filter((listed) => hasCell(own, listed, kind));
    const row = sizes.findLast((listed) => nominalInches(listed) <= nominalInches(size)) ?? sizes[0];
    if (row !== undefined) return lookUp(own, row, kind);
  }
  return lookUp(lossCoefficients, kind, 'k');
}
