import type { Job } from '../../engine/index.ts';
import { mostCutPieces, type PipeCuts } from '../../engine/takeoff/cut-pipe.ts';
import type { Allowance } from '../../engine/takeoff/cut-stock-allowance.ts';
import type { Packing, PackTotals, TooLong } from '../../engine/takeoff/cut-stock-model.ts';
import { fromCutUnits } from '../../engine/takeoff/cut-stock-unit.ts';
import { materials } from '../../tables/pipe/names.ts';
import type { PipeAllowed, PipeBought, TakeOffPipe } from '../../views/take-off.ts';
import { sizeUnit } from '../../views/text/size-text.ts';
import { tapeLength } from '../../views/text/tape-length.ts';

/** The cuts of one pipe for a page, in m. */
export function pipeBought(pipe: PipeCuts, units: Job['units']): TakeOffPipe {
  const { material, size, buried, pieces, lengths, cut } = pipe;
  const name = `${size} ${sizeUnit(size)} ${materials[material]}${buried ? ', in the ground' : ''}`;
  const head = { name, pieces: pieces.length, lengths };
  switch (cut.is) {
    case 'packed':
      return { ...head, cut: boughtOf(cut.packing) };
    case 'allowed':
      return { ...head, cut: allowedOf(cut.allowance, cut.percent) };
    case 'too long':
      return { ...head, cut: tooLongText(cut.tooLong, units) };
    case 'no stock':
    case 'too many':
      return { ...head, cut: notCut[cut.is] };
  }
}

const notCut = {
  'no stock': 'No stock length is known for this size; it is measured, not cut.',
  'too many': `More than ${mostCutPieces} pieces; they are measured, not cut.`,
} as const;

function tooLongText(tooLong: readonly TooLong[], units: Job['units']): string {
  const runs = tooLong.slice(0, 5).map(({ id, length, longestStock }) => {
    const [one, stock] = [length, longestStock].map((whole) => tapeLength(fromCutUnits(whole), units));
    return `${id} takes ${one} in one length, the longest stock has ${stock}`;
  });
  const more = tooLong.length > 5 ? `; and ${tooLong.length - 5} more` : '';
  return `Not cut: ${runs.join('; ')}${more}.`;
}

function allowedOf(allowance: Allowance, percent: number): PipeAllowed {
  const { allowed, bought } = allowance;
  return {
    counts: countsOf(allowance),
    percent,
    allowed: fromCutUnits(allowed),
    bought: fromCutUnits(bought),
  };
}

function countsOf({ counts }: Pick<PackTotals, 'counts'>): PipeBought['counts'] {
  return counts.map(({ stock, count }) => ({ count, form: stock.form, metres: fromCutUnits(stock.length) }));
}

function boughtOf({ sticks, totals, gap }: Packing): PipeBought {
  return {
    counts: countsOf(totals),
    sticks: sticks.map(({ stock, cuts, offCut }) => ({
      form: stock.form,
      metres: fromCutUnits(stock.length),
      cuts: cuts.map(({ id, length, part, parts }) => ({
        run: id,
        metres: fromCutUnits(length),
        part,
        parts,
      })),
      offCut: fromCutUnits(offCut),
    })),
    bought: fromCutUnits(totals.bought),
    offCuts: fromCutUnits(totals.offCuts),
    couplings: totals.couplings,
    gap,
  };
}
