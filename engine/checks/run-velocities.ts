import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import { velocityLimit } from './judge-velocity.ts';
import { isOver } from './over.ts';

/** How fast the water is in one run, and how fast it may be there, m/s. */
export interface RunVelocity {
  /** Position of the run in its network. */
  readonly run: number;
  readonly hot: boolean;
  readonly velocity: number;
  /** The job's own, else that of the material for cold or hot water. */
  readonly limit: number;
  readonly over: boolean;
}

/** Every run of a network with its limit: the one farthest over its limit, or nearest to it, first. */
export function runVelocities(network: Network, solution: Solution): readonly RunVelocity[] {
  return network.runs
    .map((_, run): RunVelocity => {
      const velocity = solution.velocity[run]!;
      const limit = velocityLimit(network, run).value;
      return { run, hot: network.hot[run] === 1, velocity, limit, over: isOver(velocity, limit) };
    })
    .sort((one, other) => other.velocity / other.limit - one.velocity / one.limit);
}
