import { hasCell, lookUp } from '../../tables/look-up.ts';
import { fittingLengths } from '../../tables/pipe/fitting-lengths.ts';
import { lossCoefficients } from '../../tables/pipe/loss-coefficients.ts';
import type { FittingKind, JointId, MaterialId } from '../../tables/pipe/names.ts';
import type { Cited } from '../../tables/table.ts';

/** How one fitting loses: as metres of its pipe, or K velocity heads where no table prints a length. */
export type FittingLoss =
  | { readonly by: 'equivalent length'; readonly each: Cited }
  | { readonly by: 'K'; readonly each: Cited };

/**
 * The loss of one fitting: the first table of the material and joint that prints its size, else its K.
 */
export function fittingLoss(
  material: MaterialId,
  joint: JointId,
  size: string,
  kind: FittingKind,
): FittingLoss {
  for (const table of fittingLengths[material][joint] ?? []) {
    if (hasCell(table, size, kind)) return { by: 'equivalent length', each: lookUp(table, size, kind) };
  }
  return { by: 'K', each: lookUp(lossCoefficients, kind, 'k') };
}
