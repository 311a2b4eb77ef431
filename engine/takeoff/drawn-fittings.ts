import type { FittingKind } from '../../tables/pipe/names.ts';
import type { Run } from '../job/job.ts';
import { type Pipe, partOf, pipeOf } from './article.ts';
import type { Piece } from './piece.ts';

/** Fittings that make up with nuts of their own. */
const withNuts: ReadonlySet<FittingKind> = new Set<FittingKind>([
  'compression-stop',
  'corporation-stop',
  'curb-stop',
]);

/**
 * Ells, couplings and valves as drawn in a run. The legs of tees are counted at the junctions; `elsewhere` are those
 * that another rule has counted already.
 */
export function drawnFittings(
  run: Run,
  at: number,
  elsewhere: { readonly [kind in FittingKind]?: number },
): Piece[] {
  const pipe = pipeOf(run);
  const counts = new Map<Exclude<FittingKind, 'tee-run' | 'tee-branch'>, number>();
  for (const { kind, count } of run.fittings) {
    if (kind === 'tee-run' || kind === 'tee-branch') continue;
    counts.set(kind, (counts.get(kind) ?? 0) + count);
  }
  const pieces: Piece[] = [];
  for (const [kind, drawn] of counts) {
    const count = drawn - (elsewhere[kind] ?? 0);
    const ends: readonly Pipe[] = withNuts.has(kind) ? [] : [pipe, pipe];
    if (count > 0) pieces.push({ article: partOf(kind, pipe), count, at, from: [at], ends });
  }
  return pieces;
}
