import { lossAt } from '../../../engine/hydraulics/curve.ts';
import type { SizingTask } from '../../../engine/sizing/least-cost.ts';

/** Least cost in cents by trying every combination of choices, or undefined; for a handful of runs. */
export function enumerate(
  { network, flow, choices, ties }: SizingTask,
  available: number,
): number | undefined {
  const { size, parent } = network;
  const taken = new Array<number>(size).fill(0);
  let best: number | undefined;
  for (;;) {
    let cost = 0;
    let holds = true;
    const pressure = new Float64Array(size);
    for (let at = 0; at < size; at++) {
      const pick = choices[at]![taken[at]!]!;
      const above = parent[at]!;
      const feeding = above < 0 ? undefined : choices[above]![taken[above]!]!;
      const tie = ties?.[at] ?? 'free';
      if (feeding !== undefined && tie === 'same') holds &&= pick.pipe === feeding.pipe;
      if (feeding !== undefined && tie === 'not-larger') holds &&= pick.inches <= feeding.inches;
      cost += pick.cost;
      let p = (above < 0 ? available : pressure[above]!) - pick.loss - network.elevationLoss[at]!;
      const placed = network.deviceAt[at]!;
      if (placed >= 0) {
        const { curve, setPressure } = network.devices[placed]!;
        p = Math.min(p, setPressure ?? p) - lossAt(curve, flow[at]!);
      }
      pressure[at] = p;
    }
    holds &&= network.inlets.every(({ run, requiredPressure }) => pressure[run]! >= requiredPressure);
    if (holds && (best === undefined || cost < best)) best = cost;
    let digit = 0;
    while (digit < size && ++taken[digit]! === choices[digit]!.length) taken[digit++] = 0;
    if (digit === size) return best;
  }
}
