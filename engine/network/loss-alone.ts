import { darcyWeisbachGradient } from '../hydraulics/darcy-weisbach.ts';
import { hazenWilliamsExponent } from '../hydraulics/hazen-williams.ts';
import type { Basis, Run } from '../job/job.ts';
import { isOnManifold } from './device-of.ts';
import type { Network } from './network.ts';
import { pipeArrays } from './pipe-arrays.ts';

/** What one run does at a flow, SI. */
export interface RunLoss {
  readonly velocity: number;
  /** Pa/m in the pipe. */
  readonly gradient: number;
  readonly pipe: number;
  readonly fittings: number;
}

/**
 * Losses of a run in the place of the one at a position, at a given flow (m3/s), by the basis's friction law or
 * another; the rest of the network is left out of it.
 */
export function runLoss(
  network: Network,
  at: number,
  run: Run,
  flow: number,
  friction: Basis['friction'] = network.basis.friction,
): RunLoss {
  const { arrays } = pipeArrays(
    network.basis,
    [run],
    Uint8Array.of(network.hot[at]!),
    Uint8Array.of(isOnManifold(network, at) ? 1 : 0),
  );
  const velocity = flow * arrays.velocityPerFlow[0]!;
  const gradient =
    friction === 'hazen-williams'
      ? arrays.friction[0]! * flow ** hazenWilliamsExponent
      : darcyWeisbachGradient(
          velocity,
          arrays.bore[0]!,
          arrays.roughness[0]!,
          arrays.density[0]!,
          arrays.viscosity[0]!,
        );
  return {
    velocity,
    gradient,
    pipe: gradient * arrays.length[0]!,
    fittings: gradient * arrays.fittingLength[0]! + arrays.fittingSquare[0]! * flow * flow,
  };
}

/** {@link runLoss} of the run itself in another size. */
export function lossAlone(
  network: Network,
  at: number,
  size: string,
  flow: number,
  friction?: Basis['friction'],
): RunLoss {
  return runLoss(network, at, { ...network.runs[at]!, size }, flow, friction);
}
