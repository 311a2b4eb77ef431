import { type BusyKind, idleChance } from './busy-fixtures.ts';

/** Mean (m3/s) and variance (m6/s2) of the flow of fixtures that run independently. */
export function flowMoments(kinds: readonly BusyKind[]): { mean: number; variance: number } {
  let mean = 0;
  let variance = 0;
  for (const { count, busy, flow } of kinds) {
    mean += count * busy * flow;
    variance += count * busy * (1 - busy) * flow ** 2;
  }
  return { mean, variance };
}

/** Percentile of the flow, m3/s, as if it were normal (Wistort): mean and `z` standard deviations. */
export function normalPercentile(kinds: readonly BusyKind[], level: number): number {
  const { mean, variance } = flowMoments(kinds);
  return mean + standardNormal(level) * Math.sqrt(variance);
}

/**
 * The same from the mean and the variance over the moments at which something runs (the modified form): with P0 the
 * probability that nothing does, `(mean + z sqrt((1 - P0) variance - P0 mean^2)) / (1 - P0)`. 0 where nothing ever runs.
 */
export function busyNormalPercentile(kinds: readonly BusyKind[], level: number): number {
  const { mean, variance } = flowMoments(kinds);
  const idle = idleChance(kinds);
  if (idle === 1) return 0;
  const spread = Math.max(0, (1 - idle) * variance - idle * mean ** 2);
  return (mean + standardNormal(level) * Math.sqrt(spread)) / (1 - idle);
}

/**
 * Standard deviations above the mean below which a normal quantity stays for `level` of the time, by Newton's method
 * from the middle, where the integral of the density bends one way only and no step goes too far.
 *
 * @param level from 1e-9 to 1 - 1e-9
 */
export function standardNormal(level: number): number {
  if (level < 0.5) return -standardNormal(1 - level);
  let z = 0;
  for (let round = 0; round < 50; round++) {
    const density = Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
    const step = (level - 0.5 - density * seriesOf(z)) / density;
    z += step;
    if (Math.abs(step) <= 1e-12 * z) break;
  }
  return z;
}

/** The integral of the normal density from 0 to z, over the density at z: z + z^3/3 + z^5/(3*5) + ... */
function seriesOf(z: number): number {
  let sum = z;
  let term = z;
  for (let odd = 3; term > sum * 1e-17; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}
