import { deviceOf } from '../network/device-of.ts';
import type { Network } from '../network/network.ts';

/** Developed length (m) and content (m3) of the hot pipe from the heater to the end of each hot run; else 0. */
export function hotReach(network: Network): { length: Float64Array; volume: Float64Array } {
  const { size, hot, parent } = network;
  const length = new Float64Array(size);
  const volume = new Float64Array(size);
  for (let at = 1; at < size; at++) {
    if (hot[at] === 0) continue;
    const above = parent[at]!;
    // A second heater on the way starts the count afresh: the water behind it is hot from there.
    const fresh = deviceOf(network, above)?.device === 'heater';
    length[at] = (fresh ? 0 : length[above]!) + network.length[at]!;
    volume[at] = (fresh ? 0 : volume[above]!) + network.length[at]! / network.velocityPerFlow[at]!;
  }
  return { length, volume };
}
