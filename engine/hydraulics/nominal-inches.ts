import { pexSdr9 } from '../../tables/pipe/astm-f876/sdr-9.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';

/** Outside diameter and wall that the name of a metric size says, mm. */
export interface MetricSize {
  readonly outside: number;
  readonly wall: number;
}

const metricName = /^(\d{1,3}(?:\.\d{1,2})?)x(\d{1,2}(?:\.\d{1,2})?)$/;

/** What `20x2.8` says: metric pipe is named by outside diameter and wall. Undefined for any other name. */
export function metricSize(size: string): MetricSize | undefined {
  const found = metricName.exec(size);
  return found === null ? undefined : { outside: Number(found[1]), wall: Number(found[2]) };
}

/** Bore in mm and inches of nominal size of PEX SDR-9, rising. */
const yardstick = Object.entries(pexSdr9.rows)
  .map(([size, { values }]) => ({ bore: values.bore! * 25.4, inches: nominalSizes[size]! }))
  .sort((one, other) => one.bore - other.bore);

/**
 * A size in inches of nominal size, so that any two can be compared and a rule in inches can be put to metric pipe.
 *
 * An inch size is what its name says. A metric size goes by its bore: it reaches the inch size whose bore in PEX SDR-9
 * it has, the narrowest pipe sold under each inch size here, and lies in proportion between two. `15x1` (bore 13.0 mm)
 * so reaches 1/2 in (12.1 mm) and not 5/8; `16x2.2` (11.6 mm) falls short of 1/2. This is our own rule: no standard
 * that was read equates the two series, and a rule in inches that governs a metric job is the reader's to confirm.
 *
 * @returns 0 for a name that is no size
 */
export function nominalInches(size: string): number {
  const inches = nominalSizes[size];
  if (inches !== undefined) return inches;
  const metric = metricSize(size);
  if (metric === undefined) return 0;
  const bore = metric.outside - 2 * metric.wall;
  const above = yardstick.findIndex((mark) => mark.bore >= bore);
  if (above === 0) return (yardstick[0]!.inches * bore) / yardstick[0]!.bore;
  if (above === -1) {
    const largest = yardstick.at(-1)!;
    return (largest.inches * bore) / largest.bore;
  }
  const [low, high] = [yardstick[above - 1]!, yardstick[above]!];
  return low.inches + ((bore - low.bore) / (high.bore - low.bore)) * (high.inches - low.inches);
}
