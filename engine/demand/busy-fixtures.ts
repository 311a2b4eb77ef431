import { busyCount } from './binomial.ts';

/** Fixtures of one kind, each of which runs or does not, whatever the others do. */
export interface BusyKind {
  readonly count: number;
  /** Probability that one of them runs at a moment of the busiest time, 0 to 1. */
  readonly busy: number;
  /** Flow of one that runs, m3/s. */
  readonly flow: number;
}

/** How likely each flow of a set of fixtures is: `probability[i]` of the flow `(first + i) * step`. */
export interface FlowDistribution {
  /** m3/s */
  readonly step: number;
  readonly first: number;
  readonly probability: Float64Array;
  /** Probability that nothing runs at all. */
  readonly idle: number;
}

/** What all the tails left off hold together at most. */
export const tailsLeftOff = 1e-12;

/** Noise of binary fractions in a flow that is a whole number of steps. */
const noise = 1e-9;

/**
 * The exact distribution of the flow of busy fixtures: the binomial of each kind, convolved. Tails are left off that
 * hold no more than {@link tailsLeftOff} together.
 *
 * A flow that is no whole number of steps is taken up to the next, so that no percentile is too low; it is too high by
 * less than `step` for each fixture that runs.
 *
 * @param step the lattice on which flows are counted, m3/s
 */
export function busyFlow(kinds: readonly BusyKind[], step: number): FlowDistribution {
  const running = kinds.filter(({ count, busy, flow }) => count > 0 && busy > 0 && flow > 0);
  // Two tails of each count, and two of each sum.
  const cut = tailsLeftOff / (4 * Math.max(1, running.length));
  // The widest last: until then the sums are short.
  const counted = running
    .map((kind) => ({ each: stepsOf(kind.flow, step), counts: busyCount(kind.count, kind.busy, cut) }))
    .sort(
      (one, other) => one.each * one.counts.probability.length - other.each * other.counts.probability.length,
    );
  let first = 0;
  let probability = Float64Array.of(1);
  for (const { each, counts } of counted) {
    const sums = withKind(probability, each, counts.probability);
    const { from, to } = heart(sums, cut);
    first += each * counts.first + from;
    probability = sums.slice(from, to);
  }
  return { step, first, probability, idle: idleChance(running) };
}

/** Whether every flow is a whole number of steps, so that nothing is rounded. */
export function isOnLattice(kinds: readonly BusyKind[], step: number): boolean {
  return kinds.every(({ flow }) => Math.abs(flow / step - Math.round(flow / step)) <= noise);
}

/** Probability that none of the fixtures runs. */
export function idleChance(kinds: readonly BusyKind[]): number {
  return Math.exp(
    kinds.reduce((sum, { count, busy }) => sum + (count > 0 ? count * Math.log1p(-busy) : 0), 0),
  );
}

/**
 * The smallest flow, m3/s, that is not exceeded for `level` of the busiest time. A level missed by no more than
 * {@link tailsLeftOff} counts as reached.
 *
 * @param level between 0 and 1
 */
export function flowPercentile(distribution: FlowDistribution, level: number): number {
  return reach(distribution, 0, level);
}

/**
 * The same over the moments alone at which something runs: the zero-truncated percentile. It can **fall** when a
 * fixture is added: more of the busy moments are then those of the small new one. What is sized by it must be held
 * against that; see design-flow.ts. 0 where nothing ever runs.
 */
export function busyPercentile(distribution: FlowDistribution, level: number): number {
  const { first, idle } = distribution;
  return reach(distribution, first === 0 ? 1 : 0, level * (1 - idle));
}

/** The flow at which the probabilities from the one at `from` onward come to `share`; the last, where they do not. */
function reach({ step, first, probability }: FlowDistribution, from: number, share: number): number {
  let sum = 0;
  for (let at = from; at < probability.length; at++) {
    sum += probability[at]!;
    if (probability[at]! > 0 && sum >= share - tailsLeftOff) return (first + at) * step;
  }
  return (first + probability.length - 1) * step;
}

function stepsOf(flow: number, step: number): number {
  return Math.ceil(flow / step - noise);
}

/** Convolves a distribution over the lattice with that of a count of fixtures, each `each` steps wide. */
function withKind(before: Float64Array, each: number, counts: Float64Array): Float64Array<ArrayBuffer> {
  const after = new Float64Array(before.length + each * (counts.length - 1));
  for (let count = 0; count < counts.length; count++) {
    const weight = counts[count]!;
    const shift = count * each;
    for (let at = 0; at < before.length; at++) after[shift + at]! += weight * before[at]!;
  }
  return after;
}

/** Where the probabilities lie without two tails of at most `cut` each: those of sums grow faster than their heart. */
function heart(probability: Float64Array, cut: number): { from: number; to: number } {
  let from = 0;
  for (let rest = probability[0]!; rest <= cut; rest += probability[from]!) from++;
  let to = probability.length;
  for (let rest = probability[to - 1]!; rest <= cut; rest += probability[to - 1]!) to--;
  return { from, to };
}
