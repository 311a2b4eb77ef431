import { expect } from 'vitest';
import { packPieces } from '../../../engine/takeoff/cut-stock.ts';
import { optimise } from '../sizing/mixed-integer.ts';
import { cutProgramme, randomCutList } from './cut-stock-programme.ts';

/** Packs random lists and holds each cost to that of the mixed-integer programme. */
export async function compareCutLists(seeds: readonly number[], most: number): Promise<void> {
  for (const seed of seeds) {
    const list = randomCutList(seed, most);
    const packing = packPieces(list.pieces, list.stock, { perCut: list.perCut });
    if (!packing.ok) throw new Error(`list ${seed} has a piece that is too long`);
    expect(packing.cost, `list ${seed}`).toBe(await optimise(cutProgramme(list)));
    expect(packing.provedLeast, `list ${seed}`).toBe(true);
    expect(packing.bound, `list ${seed}`).toBe(packing.cost);
  }
}
