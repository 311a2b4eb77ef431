import type { Decimal } from 'decimal.js';
import { citeValue, hasCell, lookUp } from '../../tables/look-up.ts';
import { guidedRows, guidesUpTo, spacingRows, supportSpacing } from '../../tables/supports/spacing.ts';
import type { Cited } from '../../tables/table.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Run } from '../job/job.ts';
import { Exact, nothing } from './money.ts';
import type { Counted, Piece } from './piece.ts';
import { feetOf } from './price-run.ts';

export interface Supported extends Counted {
  /** The table values that were used. */
  readonly cited: readonly Cited[];
}

/**
 * Supports of one run above ground: hangers along its horizontal pipe, which is the developed length less the rise,
 * and riser supports and guides along the rise.
 *
 * - hangers = horizontal / spacing, rounded up; riser supports = rise / spacing, rounded up
 * - guides = rise / spacing, half and more rounded up, for plastic pipe up to the size that the note names
 */
export function supports(run: Run, at: number): Supported {
  const { material, size, id } = run;
  const inches = nominalInches(size);
  const row = spacingRows[material].find(({ sizesUpTo }) => inches <= sizesUpTo)?.row;
  if (row === undefined) {
    return { pieces: [], cited: [], questions: [{ code: 'no-support-spacing', run: id, material, size }] };
  }
  const along = hasCell(supportSpacing, row, 'horizontalInches')
    ? lookUp(supportSpacing, row, 'horizontalInches')
    : lookUp(supportSpacing, row, 'horizontal');
  const up = lookUp(supportSpacing, row, 'vertical');
  const rise = run.rise === undefined ? nothing : feetOf(run.rise).abs();
  const level = feetOf(run.length).minus(rise);
  const horizontal = level.isNegative() ? nothing : level;
  const spans = rise.dividedBy(up.printed);
  const guided = guidedRows.has(row) && inches <= guidesUpTo.printed;
  const part = (kind: 'hanger' | 'riser-support' | 'guide', count: Decimal): Piece[] =>
    count.isZero()
      ? []
      : [{ article: { kind, material, sizes: [size] }, count: count.toNumber(), at, from: [at], ends: [] }];
  const guides = guided ? spans.plus(0.5).floor() : nothing;
  return {
    questions: [],
    cited: [
      ...(horizontal.isZero() ? [] : [along]),
      ...(rise.isZero() ? [] : [up]),
      ...(guides.isZero() ? [] : [citeValue(guidesUpTo)]),
    ],
    pieces: [
      ...part('hanger', horizontal.dividedBy(spacingFeet(along)).ceil()),
      ...part('riser-support', spans.ceil()),
      ...part('guide', guides),
    ],
  };
}

function spacingFeet({ printed, unit }: Cited): Decimal {
  return unit === 'in' ? new Exact(printed).dividedBy(12) : new Exact(printed);
}
