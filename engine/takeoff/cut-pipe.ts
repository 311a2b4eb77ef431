import { type MaterialId, materials } from '../../tables/pipe/names.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { type ServiceId, services } from '../../tables/takeoff/part-kinds.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { packPieces } from './cut-stock.ts';
import { usualStock } from './cut-stock-lengths.ts';
import type { PackResult } from './cut-stock-model.ts';
import { toCutUnits } from './cut-stock-unit.ts';
import type { PipePiece } from './pipe-pieces.ts';
import type { TakeOff } from './take-off.ts';

/** Pieces of one pipe that are cut for one request; more are only measured. */
export const mostCutPieces = 400;

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
    | { readonly ok: true; readonly packing: PackResult }
    /** No stock length is known for the size, or there are more pieces than are cut at once. */
    | { readonly ok: false; readonly why: 'no stock' | 'too many' };
}

/**
 * The pipe of a take-off cut from the lengths in which it is usually sold, so that the length bought is least. A piece
 * from a manifold is never spliced; another one only where it is longer than any stock. Cold, hot and outdoor pipe of
 * one material and size comes off the same stock. Copper above ground is drawn tube in sticks, in the ground annealed
 * tube off coils where these are sold in its size.
 *
 * @returns by material as the tables name them, sizes rising, what is buried last
 */
export function cutPipe({ pieces, lines }: Pick<TakeOff, 'pieces' | 'lines'>): readonly PipeCuts[] {
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
  return [...groups.values()].map(cutsOf).sort(inOrder);
}

function isCopper(material: MaterialId): boolean {
  return material.startsWith('copper-');
}

function cutsOf({ buried, pieces }: { buried: boolean; pieces: readonly PipePiece[] }): PipeCuts {
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
    cut: cutOf(pipe),
  };
}

function cutOf({
  material,
  size,
  buried,
  pieces,
}: Pick<PipeCuts, 'material' | 'size' | 'buried' | 'pieces'>): PipeCuts['cut'] {
  if (pieces.length > mostCutPieces) return { ok: false, why: 'too many' };
  const all = usualStock(material, size);
  const form = buried ? 'coil' : 'stick';
  const suited = isCopper(material) ? all.filter((one) => one.form === form) : all;
  const stock = suited.length > 0 ? suited : all;
  if (stock.length === 0) return { ok: false, why: 'no stock' };
  const list = pieces.map(({ run, feet, homeRun }) => ({
    id: run,
    // What is shorter than the unit of a cut list is still a piece.
    length: Math.max(1, toCutUnits(toSI(feet.toNumber(), 'ft'))),
    spliceable: !homeRun,
  }));
  return { ok: true, packing: packPieces(list, stock) };
}

const materialPlace = new Map(Object.keys(materials).map((material, place) => [material, place]));

function inOrder(one: PipeCuts, other: PipeCuts): number {
  return (
    materialPlace.get(one.material)! - materialPlace.get(other.material)! ||
    (nominalSizes[one.size] ?? 0) - (nominalSizes[other.size] ?? 0) ||
    Number(one.buried) - Number(other.buried)
  );
}
