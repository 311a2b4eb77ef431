import { type Curve, lossAt } from '../hydraulics/curve.ts';
import type { Network } from './network.ts';
import type { Solution } from './solution.ts';
import { behindDevice } from './solve.ts';

/**
 * Residual pressure at the end of a path (Pa) if one run on it lost something else; flows stay as solved. A gain
 * before a reducing valve may not come through it, so the path is walked again rather than the difference added.
 *
 * @param path positions from the street outwards
 * @param changed position of the changed run
 * @param change what it loses instead, Pa, and the curve or set pressure that its device would have
 */
export function pressureAlong(
  network: Network,
  solution: Solution,
  path: readonly number[],
  changed: number,
  change: {
    readonly pipe?: number;
    readonly fittings?: number;
    readonly curve?: Curve;
    readonly setPressure?: number;
  },
): number {
  let pressure = solution.supplyPressure;
  for (const at of path) {
    const here = at === changed ? change : {};
    pressure -= here.pipe ?? solution.pipeLoss[at]!;
    pressure -= here.fittings ?? solution.fittingLoss[at]!;
    pressure -= solution.elevationLoss[at]!;
    const placed = network.deviceAt[at]!;
    if (placed < 0) continue;
    const { curve, setPressure } = network.devices[placed]!;
    pressure = behindDevice(
      pressure,
      here.setPressure ?? setPressure,
      lossAt(here.curve ?? curve, solution.flow[at]!),
    );
  }
  return pressure;
}
