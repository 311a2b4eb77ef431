import { designFlows } from '../demand/design-flow.ts';
import { lossAt } from '../hydraulics/curve.ts';
import { darcyWeisbachGradient } from '../hydraulics/darcy-weisbach.ts';
import { hazenWilliamsExponent } from '../hydraulics/hazen-williams.ts';
import { supplyPressure, supplyStatic } from '../hydraulics/supply-pressure.ts';
import type { Network } from './network.ts';
import type { Solution } from './solution.ts';

/** The arrays that a solve fills; what no flow changes stands in the network. */
export type Filled = Pick<
  Solution,
  'flow' | 'velocity' | 'gradient' | 'pipeLoss' | 'fittingLoss' | 'deviceLoss' | 'residual'
>;

/**
 * Solves a network: one pass against the flow of water finds the design flow of every run, one pass with it carries
 * pressure from the street to every tap. Every run carries its own design demand at once (design, section 4), so
 * there is nothing to iterate. Time grows with the number of runs; nothing is rounded.
 *
 * @param into an earlier solution of a network of the same size, whose arrays are written over; for loops that solve
 *   many times, where making the arrays costs more than filling them
 */
export function solve(network: Network, into: Filled = emptyArrays(network.size)): Solution {
  designFlows(network, into.flow);
  fillGradients(network, into);
  const atStreet = supplyPressure(network.supply, into.flow[0]!);
  carryPressure(network, into, atStreet);
  return {
    ...network.served,
    ...into,
    elevationLoss: network.elevationLoss,
    staticPressure: network.staticPressure,
    supplyPressure: atStreet,
    supplyStatic: supplyStatic(network.supply),
  };
}

function emptyArrays(size: number): Filled {
  const array = (): Float64Array => new Float64Array(size);
  return {
    flow: array(),
    velocity: array(),
    gradient: array(),
    pipeLoss: array(),
    fittingLoss: array(),
    deviceLoss: array(),
    residual: array(),
  };
}

function carryPressure(network: Network, into: Filled, atStreet: number): void {
  const { size, parent, deviceAt, devices, length, elevationLoss, fittingLength, fittingSquare } = network;
  const { flow, gradient, pipeLoss, fittingLoss, deviceLoss, residual } = into;
  for (let at = 0; at < size; at++) {
    const q = flow[at]!;
    const from = parent[at]!;
    const pipe = gradient[at]! * length[at]!;
    const fittings = gradient[at]! * fittingLength[at]! + fittingSquare[at]! * q * q;
    pipeLoss[at] = pipe;
    fittingLoss[at] = fittings;
    deviceLoss[at] = 0;
    const before = (from < 0 ? atStreet : residual[from]!) - pipe - fittings - elevationLoss[at]!;
    const placed = deviceAt[at]!;
    if (placed < 0) {
      residual[at] = before;
      continue;
    }
    const { curve, setPressure } = devices[placed]!;
    const after = behindDevice(before, setPressure, lossAt(curve, q));
    deviceLoss[at] = before - after;
    residual[at] = after;
  }
}

/**
 * Pressure behind a device, Pa. A reducing valve holds its set pressure less its fall-off, and cannot raise what
 * comes in; below its set pressure it stands open and is taken to lose its fall-off still, which is on the safe side.
 * Any other device takes its loss.
 */
export function behindDevice(before: number, setPressure: number | undefined, loss: number): number {
  return (setPressure === undefined ? before : Math.min(before, setPressure)) - loss;
}

function fillGradients(network: Network, { flow, velocity, gradient }: Filled): void {
  const { size, velocityPerFlow, friction, bore, roughness, density, viscosity } = network;
  if (network.basis.friction === 'hazen-williams') {
    for (let at = 0; at < size; at++) {
      const q = flow[at]!;
      velocity[at] = q * velocityPerFlow[at]!;
      gradient[at] = friction[at]! * q ** hazenWilliamsExponent;
    }
    return;
  }
  for (let at = 0; at < size; at++) {
    const speed = flow[at]! * velocityPerFlow[at]!;
    velocity[at] = speed;
    gradient[at] = darcyWeisbachGradient(speed, bore[at]!, roughness[at]!, density[at]!, viscosity[at]!);
  }
}
