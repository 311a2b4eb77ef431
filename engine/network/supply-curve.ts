import { lossAt } from '../hydraulics/curve.ts';
import { supplyPressure } from '../hydraulics/supply-pressure.ts';
import { deviceOf } from './device-of.ts';
import { runLoss } from './loss-alone.ts';
import type { Network } from './network.ts';
import { pathTo } from './path.ts';
import type { Report } from './report.ts';
import type { Solution } from './solution.ts';
import { behindDevice } from './solve.ts';

/** What the supply gives at one flow, SI: pressure at the street, and what the service leaves of it. */
export interface SupplyPoint {
  readonly flow: number;
  readonly atStreet: number;
  readonly behindService: number;
}

/** The supply's pressure against its flow, and the point at which the building's demand meets it. */
export interface SupplyCurve {
  /** Position of the run at whose end the service's losses are all taken. */
  readonly service: number;
  readonly points: readonly SupplyPoint[];
  readonly demand: SupplyPoint;
}

/**
 * Pressure at the street and behind the service at each of `flows` (m3/s). The service ends at the outlet of the
 * first meter on the way to the worst inlet; where none stands there, at the end of the first run. A run before the
 * meter that carries less than the whole demand keeps its share of any other flow, so that at the demand every
 * figure is the solver's own.
 */
export function supplyCurve({ network, solution, worst }: Report, flows: readonly number[]): SupplyCurve {
  const service = endOfService(network, worst?.inlet.run);
  const demand = solution.flow[0]!;
  const point = (flow: number): SupplyPoint => {
    const atStreet = supplyPressure(network.supply, flow);
    const behindService = carriedTo(network, solution, service, atStreet, demand > 0 ? flow / demand : 0);
    return { flow, atStreet, behindService };
  };
  return { service, points: flows.map(point), demand: point(demand) };
}

function endOfService(network: Network, worst: number | undefined): number {
  const way = worst === undefined ? [] : pathTo(network, worst);
  return way.find((at) => deviceOf(network, at)?.device === 'meter') ?? 0;
}

/** Pressure at the end of a run, Pa, while every run on the way carries `share` of its design flow. */
function carriedTo(network: Network, solution: Solution, end: number, from: number, share: number): number {
  return pathTo(network, end).reduce((before, at) => {
    const flow = solution.flow[at]! * share;
    const { pipe, fittings } = runLoss(network, at, network.runs[at]!, flow);
    const after = before - pipe - fittings - network.elevationLoss[at]!;
    const placed = network.deviceAt[at]!;
    if (placed < 0) return after;
    const { curve, setPressure } = network.devices[placed]!;
    return behindDevice(after, setPressure, lossAt(curve, flow));
  }, from);
}
