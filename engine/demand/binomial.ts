/** Probabilities of `first`, `first + 1`, ... of a count. */
export interface CountDistribution {
  readonly first: number;
  readonly probability: Float64Array;
}

/**
 * How many of `count` like fixtures run at once, each with probability `busy` and none minding the others: the
 * binomial, by the ratio of neighbouring terms outward from the most likely one. No term is larger than that one, so
 * nothing overflows, however many fixtures there are.
 *
 * @param count a whole number, not negative
 * @param busy from 0 to 1
 * @param cut what each tail that is left off may hold at most; 0 leaves off only what a number cannot hold
 */
export function busyCount(count: number, busy: number, cut: number): CountDistribution {
  if (count === 0 || busy <= 0) return { first: 0, probability: Float64Array.of(1) };
  if (busy >= 1) return { first: count, probability: Float64Array.of(1) };
  const odds = busy / (1 - busy);
  const mode = Math.min(count, Math.floor((count + 1) * busy));
  const up = tail(count - mode, cut, (step) => ((count - mode - step + 1) / (mode + step)) * odds);
  const down = tail(mode, cut, (step) => (mode - step + 1) / (count - mode + step) / odds);
  const probability = Float64Array.from([...down.reverse(), 1, ...up]);
  const sum = probability.reduce((total, term) => total + term, 0);
  return { first: mode - down.length, probability: probability.map((term) => term / sum) };
}

/**
 * Terms one side of the most likely one, which is taken as 1, until the rest is less than `cut`. The ratios fall from
 * step to step, so the rest is less than a geometric series; and the whole is at least 1.
 */
function tail(steps: number, cut: number, ratio: (step: number) => number): number[] {
  const terms: number[] = [];
  let term = 1;
  for (let step = 1; step <= steps; step++) {
    const next = ratio(step);
    if (next < 1 && (term * next) / (1 - next) <= cut) break;
    term *= next;
    terms.push(term);
  }
  return terms;
}
