import type { FittingKind } from '../../tables/pipe/names.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Run } from '../job/job.ts';
import type { Network } from '../network/network.ts';

export function drawn(run: Pick<Run, 'fittings'>, kind: FittingKind): number {
  return run.fittings.reduce((sum, one) => (one.kind === kind ? sum + one.count : sum), 0);
}

/** Legs of tees drawn in a run: where it leaves a tee, straight on or by its side. */
export function legsOf(run: Pick<Run, 'fittings'>): number {
  return drawn(run, 'tee-run') + drawn(run, 'tee-branch');
}

/** Positions of the runs that each run feeds, in order. */
export function followersOf({
  parent,
  size,
}: Pick<Network, 'parent' | 'size'>): readonly (readonly number[])[] {
  const followers: number[][] = Array.from({ length: size }, () => []);
  for (let at = 1; at < size; at++) followers[parent[at]!]!.push(at);
  return followers;
}

/**
 * Which follower goes straight on through the tees of a junction: the one drawn through tees only; where none or
 * several are, the largest, and of these the first.
 *
 * @returns its position, and whether the drawing left it open
 */
export function straightOf(
  runs: readonly Run[],
  followers: readonly number[],
): { readonly straight: number; readonly unclear: boolean } {
  const through = followers.filter(
    (at) => drawn(runs[at]!, 'tee-run') > 0 && drawn(runs[at]!, 'tee-branch') === 0,
  );
  const inches = (at: number): number => nominalInches(runs[at]!.size);
  const among = through.length > 0 ? through : followers;
  const straight = among.reduce((best, at) => (inches(at) > inches(best) ? at : best));
  // Runs without any leg are asked about for themselves.
  const unclear =
    through.length > 1 || (through.length === 0 && followers.every((at) => legsOf(runs[at]!) > 0));
  return { straight, unclear };
}
