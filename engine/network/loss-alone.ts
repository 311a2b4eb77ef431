import { darcyWeisbachGradient } from '../hydraulics/darcy-weisbach.ts';
import { hazenWilliamsExponent } from '../hydraulics/hazen-williams.ts';
import type { Basis } from '../job/job.ts';
import type { Network } from './network.ts';
import { pipeArrays } from './pipe-arrays.ts';

/**
 * Loss of one run in pipe and fittings if it were of another size, or judged by another friction law, Pa, at a given
 * flow (m3/s); the rest of the network is left out of it.
 */
export function lossAlone(
  network: Network,
  at: number,
  size: string,
  flow: number,
  friction: Basis['friction'] = network.basis.friction,
): { pipe: number; fittings: number } {
  const { arrays } = pipeArrays(
    network.basis,
    [{ ...network.runs[at]!, size }],
    Uint8Array.of(network.hot[at]!),
  );
  const speed = flow * arrays.velocityPerFlow[0]!;
  const gradient =
    friction === 'hazen-williams'
      ? arrays.friction[0]! * flow ** hazenWilliamsExponent
      : darcyWeisbachGradient(
          speed,
          arrays.bore[0]!,
          arrays.roughness[0]!,
          arrays.density[0]!,
          arrays.viscosity[0]!,
        );
  return {
    pipe: gradient * arrays.length[0]!,
    fittings: gradient * arrays.fittingLength[0]! + arrays.fittingSquare[0]! * flow * flow,
  };
}
