import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import { type ServiceId, services } from '../../tables/takeoff/part-kinds.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import { packPieces } from './cut-stock.ts';
import { type Allowance, allowWaste } from './cut-stock-allowance.ts';
import { usualStock } from './cut-stock-lengths.ts';
import type { Packing, TooLong } from './cut-stock-model.ts';
import { toCutUnits } from './cut-stock-unit.ts';
import type { PipePiece } from './pipe-pieces.ts';
import type { TakeOff } from './take-off.ts';

/** Pieces of one pipe that are cut for one request; more are only measured. */
export const mostCutPieces = 400;

/**
 * How pipe is bought: cut with each piece in as few parts as can be; cut with off-cuts coupled, but no part for the sake
 * of that under two feet; or with so many percent of its length for waste and no cutting planned.
 */
export type CutPlan =
  | { readonly plan: 'whole' }
  | { readonly plan: 'coupled' }
  | { readonly plan: 'allowance'; readonly percent: number };

/** Common practice, no source: a shorter part is not worth its coupling. */
const shortestPart = toCutUnits(toSI(2, 'ft'));

/** The pipe of one material and size, as it is bought and cut. */
export interface PipeCuts {
  readonly material: MaterialId;
  readonly size: string;
  /** Copper in the ground, which comes off coils; all other pipe is not set apart. */
  readonly buried: boolean;
  readonly pieces: readonly PipePiece[];
  /** Developed length for each service, in the order of the table of services, m; those of which there is none are left out. */
  readonly lengths: readonly { readonly service: ServiceId; readonly metres: number }[];
  readonly cut:
    | { readonly is: 'packed'; readonly packing: Packing }
    | { readonly is: 'allowed'; readonly allowance: Allowance; readonly percent: number }
    /** Home runs that are longer than any stock. */
    | { readonly is: 'too long'; readonly tooLong: readonly TooLong[] }
    /** No stock length is known for the size, or there are more pieces than are cut at once. */
    | { readonly is: 'no stock' }
    | { readonly is: 'too many' };
}

/**
 * The pipe of a take-off cut from the lengths in which it is usually sold, so that the length bought is least. A piece
 * from a manifold is never spliced; another one only where it is longer than any stock, or where the plan couples. Cold, hot and outdoor pipe of
 * one material and size comes off the same stock. Copper above ground is drawn tube in sticks, in the ground annealed
 * tube off coils where these are sold in its size.
 *
 * @returns by material as the tables name them, sizes rising, what is buried last
 */
export function cutPipe(
  { pieces, lines }: Pick<TakeOff, 'pieces' | 'lines'>,
  plan: CutPlan = { plan: 'whole' },
): readonly PipeCuts[] {
  const underground = new Set(
    lines
      .filter(({ article, phase }) => article.kind === 'pipe' && phase === 'underground')
      .flatMap(({ from }) => from.flatMap(({ runs }) => runs)),
  );
  const groups = new Map<string, { buried: boolean; pieces: PipePiece[] }>();
  for (const piece of pieces) {
    const { material, size, run } = piece;
    const buried = isCopper(material) && underground.has(run);
    const key = `${material} ${size} ${buried}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { buried, pieces: [piece] });
    else group.pieces.push(piece);
  }
  return [...groups.values()].map((group) => cutsOf(group, plan)).sort(inOrder);
}

function isCopper(material: MaterialId): boolean {
  return material.startsWith('copper-');
}

function cutsOf(
  { buried, pieces }: { buried: boolean; pieces: readonly PipePiece[] },
  plan: CutPlan,
): PipeCuts {
  const { material, size } = pieces[0]!;
  const lengths = (Object.keys(services) as ServiceId[]).flatMap((service) => {
    const own = pieces.filter((piece) => piece.service === service);
    const metres = own.reduce((sum, { feet }) => sum + toSI(feet.toNumber(), 'ft'), 0);
    return own.length === 0 ? [] : [{ service, metres }];
  });
  const pipe = { material, size, buried, pieces };
  return {
    ...pipe,
    lengths,
    cut: cutOf(pipe, plan),
  };
}

function cutOf(
  { material, size, buried, pieces }: Pick<PipeCuts, 'material' | 'size' | 'buried' | 'pieces'>,
  plan: CutPlan,
): PipeCuts['cut'] {
  if (plan.plan !== 'allowance' && pieces.length > mostCutPieces) return { is: 'too many' };
  const all = usualStock(material, size);
  const form = buried ? 'coil' : 'stick';
  const suited = isCopper(material) ? all.filter((one) => one.form === form) : all;
  const stock = suited.length > 0 ? suited : all;
  if (stock.length === 0) return { is: 'no stock' };
  const list = pieces.map(({ run, feet, homeRun }) => ({
    id: run,
    // What is shorter than the unit of a cut list is still a piece.
    length: Math.max(1, toCutUnits(toSI(feet.toNumber(), 'ft'))),
    spliceable: !homeRun,
  }));
  if (plan.plan === 'allowance') {
    const allowance = allowWaste(list, stock, plan.percent);
    return allowance.ok
      ? { is: 'allowed', allowance, percent: plan.percent }
      : { is: 'too long', tooLong: allowance.tooLong };
  }
  // Where no piece may be coupled, whole pieces are the question, and their bound is the closer one.
  const couples = plan.plan === 'coupled' && list.some(({ spliceable }) => spliceable);
  const packing = packPieces(list, stock, couples ? { joinOffCuts: true, shortestPart } : {});
  return packing.ok ? { is: 'packed', packing } : { is: 'too long', tooLong: packing.tooLong };
}

const materialPlace = new Map(Object.keys(materials).map((material, place) => [material, place]));

function inOrder(one: PipeCuts, other: PipeCuts): number {
  return (
    materialPlace.get(one.material)! - materialPlace.get(other.material)! ||
    nominalInches(one.size) - nominalInches(other.size) ||
    Number(one.buried) - Number(other.buried)
  );
}
