import type { Inlet, Network } from '../network/network.ts';
import { hotReach } from './hot-reach.ts';

/** How long a hot inlet waits for hot water. */
export interface HotWait {
  readonly inlet: Inlet;
  /** Developed length from the heater, m. */
  readonly length: number;
  /** Cold water that has to leave the pipe first, m3: what each draw from a cold pipe wastes. */
  readonly volume: number;
  /** At the fixture's own flow, s. */
  readonly seconds: number;
}

/**
 * The wait at every hot inlet, the longest first: content of the hot pipe over the fixture's flow. That is plug flow
 * from a pipe gone cold; mixing and the heat that the pipe takes make a real wait longer, never shorter.
 */
export function hotWaits(network: Network): HotWait[] {
  const { length, volume } = hotReach(network);
  return network.inlets
    .filter(({ side }) => side === 'hot')
    .map((inlet) => ({
      inlet,
      length: length[inlet.run]!,
      volume: volume[inlet.run]!,
      seconds: volume[inlet.run]! / inlet.requiredFlow,
    }))
    .sort((one, other) => other.seconds - one.seconds);
}
