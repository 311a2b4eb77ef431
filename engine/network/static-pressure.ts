import { lossAt } from '../hydraulics/curve.ts';
import { supplyStatic } from '../hydraulics/supply-pressure.ts';
import type { Network } from './network.ts';
import { behindDevice } from './solve.ts';

/** Pressure at the end of every run while nothing flows and the street is at its high, Pa. */
export function staticPressures(
  network: Pick<Network, 'supply' | 'parent' | 'elevationLoss' | 'deviceAt' | 'devices'>,
): Float64Array {
  const { parent, elevationLoss, deviceAt, devices } = network;
  const pressure = new Float64Array(parent.length);
  for (let at = 0; at < pressure.length; at++) {
    const from = parent[at]!;
    const before = (from < 0 ? supplyStatic(network.supply) : pressure[from]!) - elevationLoss[at]!;
    const placed = deviceAt[at]!;
    if (placed < 0) {
      pressure[at] = before;
      continue;
    }
    const { curve, setPressure } = devices[placed]!;
    pressure[at] = behindDevice(before, setPressure, lossAt(curve, 0));
  }
  return pressure;
}
