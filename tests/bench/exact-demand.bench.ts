import { type BusyKind, busyFlow, busyPercentile } from '../../engine/demand/busy-fixtures.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { figure, median, slope } from './figure.ts';

/** Fixtures of 15 kinds, invented: flows of 0.6 to 6.2 gpm, each busy for 1 to 5.2 percent of the time. */
function fixturesOf15Kinds(count: number): BusyKind[] {
  return Array.from({ length: 15 }, (_, kind) => ({
    count: Math.floor(count / 15) + (kind < count % 15 ? 1 : 0),
    busy: 0.01 + 0.003 * kind,
    flow: toSI((6 + 4 * ((kind * 7) % 15)) / 10, 'gpm'),
  }));
}

/** The exact 99th percentile of ten thousand fixtures, and how its time grows from a thousand to a hundred thousand. */
export function benchExactDemand(short: boolean): void {
  const step = toSI(0.1, 'gpm');
  const spent = (count: number): number => {
    const kinds = fixturesOf15Kinds(count);
    const times: number[] = [];
    for (let round = 0; round < (short ? 3 : 15); round++) {
      const start = performance.now();
      const flow = busyPercentile(busyFlow(kinds, step), 0.99);
      times.push(performance.now() - start);
      if (!(flow > 0)) throw new Error(`no flow of ${count} fixtures`);
    }
    return median(times);
  };
  spent(1000);
  figure('exact_demand_10000_ms', spent(10_000), 'ms');
  const points = [1000, 3162, 10_000, 31_623, 100_000].map((count): readonly [number, number] => [
    Math.log(count),
    Math.log(spent(count)),
  ]);
  figure('exact_demand_growth_exponent', slope(points), 'exponent_1000_to_100000_fixtures');
}
