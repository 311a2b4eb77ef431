import { lossAt } from '../hydraulics/curve.ts';
import { behindDevice } from '../network/solve.ts';
import type { SizingTask } from './least-cost.ts';

/**
 * Between which pressures the start of each run can be (Pa, by position), whatever sizes the runs upstream take:
 * from the least at the street with every run at its greatest loss, to the most with every run at its least.
 */
export function windows({ network, flow, choices, between }: SizingTask): {
  most: Float64Array;
  least: Float64Array;
} {
  const { size, subtreeEnd, elevationLoss, deviceAt, devices } = network;
  const most = new Float64Array(size);
  const least = new Float64Array(size);
  most[0] = between?.most ?? Number.POSITIVE_INFINITY;
  least[0] = between?.least ?? Number.NEGATIVE_INFINITY;
  for (let at = 0; at < size; at++) {
    let smallest = Number.POSITIVE_INFINITY;
    let greatest = 0;
    for (const { loss } of choices[at]!) {
      smallest = Math.min(smallest, loss);
      greatest = Math.max(greatest, loss);
    }
    let high = most[at]! - smallest - elevationLoss[at]!;
    let low = least[at]! - greatest - elevationLoss[at]!;
    const placed = deviceAt[at]!;
    if (placed >= 0) {
      const { curve, setPressure } = devices[placed]!;
      const loss = lossAt(curve, flow[at]!);
      high = behindDevice(high, setPressure, loss);
      low = behindDevice(low, setPressure, loss);
    }
    for (let child = at + 1; child < subtreeEnd[at]!; child = subtreeEnd[child]!) {
      most[child] = high;
      least[child] = low;
    }
  }
  return { most, least };
}
