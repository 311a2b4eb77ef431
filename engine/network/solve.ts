import { type Demand, gatherDemand } from '../demand/gather-demand.ts';
import { lossAt } from '../hydraulics/curve.ts';
import { darcyWeisbachGradient } from '../hydraulics/darcy-weisbach.ts';
import { hazenWilliamsExponent } from '../hydraulics/hazen-williams.ts';
import { supplyPressure, supplyStatic } from '../hydraulics/supply-pressure.ts';
import type { Network } from './network.ts';
import type { Solution } from './solution.ts';

/**
 * Solves a network: one pass against the flow of water gathers demand, one pass with it carries pressure from the
 * street to every tap. Every run carries its own design demand at once (design, section 4), so there is nothing to
 * iterate. Time grows with the number of runs; nothing is rounded.
 */
export function solve(network: Network): Solution {
  const demand = gatherDemand(network);
  return { ...demand, ...carryPressure(network, demand.flow) };
}

type Pressures = Omit<Solution, keyof Demand>;

/** Losses and pressures of every run at given flows (m3/s by position). */
export function carryPressure(network: Network, flow: Float64Array): Pressures {
  const { size, parent, deviceAt, devices, length, rise, weight, fittingLength, fittingSquare } = network;
  const velocity = new Float64Array(size);
  const gradient = gradients(network, flow, velocity);
  const pipeLoss = new Float64Array(size);
  const fittingLoss = new Float64Array(size);
  const deviceLoss = new Float64Array(size);
  const elevationLoss = new Float64Array(size);
  const residual = new Float64Array(size);
  const staticPressure = new Float64Array(size);
  const atStreet = supplyPressure(network.supply, flow[0]!);
  const staticAtStreet = supplyStatic(network.supply);

  for (let at = 0; at < size; at++) {
    const q = flow[at]!;
    const from = parent[at]!;
    const pipe = gradient[at]! * length[at]!;
    const fittings = gradient[at]! * fittingLength[at]! + fittingSquare[at]! * q * q;
    const height = weight[at]! * rise[at]!;
    let after = (from < 0 ? atStreet : residual[from]!) - pipe - fittings - height;
    let still = (from < 0 ? staticAtStreet : staticPressure[from]!) - height;
    const placed = deviceAt[at]!;
    if (placed >= 0) {
      const { curve, setPressure } = devices[placed]!;
      const before = after;
      // A reducing valve holds its set pressure less its fall-off, and cannot raise what comes in.
      if (setPressure !== undefined) {
        after = Math.min(after, setPressure);
        still = Math.min(still, setPressure);
      }
      after -= lossAt(curve, q);
      still -= lossAt(curve, 0);
      deviceLoss[at] = before - after;
    }
    pipeLoss[at] = pipe;
    fittingLoss[at] = fittings;
    elevationLoss[at] = height;
    residual[at] = after;
    staticPressure[at] = still;
  }
  return {
    velocity,
    gradient,
    pipeLoss,
    fittingLoss,
    deviceLoss,
    elevationLoss,
    residual,
    staticPressure,
    supplyPressure: atStreet,
    supplyStatic: staticAtStreet,
  };
}

function gradients(network: Network, flow: Float64Array, velocity: Float64Array): Float64Array {
  const { size, velocityPerFlow, friction, bore, roughness, density, viscosity } = network;
  const gradient = new Float64Array(size);
  if (network.basis.friction === 'hazen-williams') {
    for (let at = 0; at < size; at++) {
      const q = flow[at]!;
      velocity[at] = q * velocityPerFlow[at]!;
      gradient[at] = friction[at]! * q ** hazenWilliamsExponent;
    }
    return gradient;
  }
  for (let at = 0; at < size; at++) {
    const speed = flow[at]! * velocityPerFlow[at]!;
    velocity[at] = speed;
    gradient[at] = darcyWeisbachGradient(speed, bore[at]!, roughness[at]!, density[at]!, viscosity[at]!);
  }
  return gradient;
}
