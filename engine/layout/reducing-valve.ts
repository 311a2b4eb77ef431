import { citeValue } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { fromSI } from '../../tables/units/definitions.ts';
import type { Quantity } from '../job/job.ts';
import type { Network } from '../network/network.ts';
import { parseQuantity } from '../units/parse-quantity.ts';

/**
 * The set pressure of a reducing valve at the end of the service, where static pressure at some inlet is over the
 * code's limit: a step of 5 psi or 25 kPa under what the lowest inlet allows, in whole steps.
 *
 * @param serviceEnd position of the last run of the service
 * @returns undefined where no inlet is over the limit
 */
export function reducingValveSet(network: Network, serviceEnd: number): Quantity | undefined {
  const { basis, inlets, staticPressure, job } = network;
  const limit = citeValue(profiles[basis.profile].limits.maximumStatic).value;
  const highest = Math.max(...inlets.map(({ run }) => staticPressure[run]!));
  if (!(highest > limit)) return undefined;
  const { unit, step } =
    job.units === 'us' ? ({ unit: 'psi', step: 5 } as const) : ({ unit: 'kPa', step: 25 } as const);
  const gained = Math.max(0, highest - staticPressure[serviceEnd]!);
  const steps = Math.max(1, Math.floor(fromSI(limit - gained, unit) / step - 1 + 1e-9));
  const parsed = parseQuantity(`${steps * step} ${unit}`, 'pressure');
  if (!parsed.ok) throw new RangeError(parsed.problem);
  return parsed.quantity;
}
