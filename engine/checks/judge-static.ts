import { citeValue } from '../../tables/look-up.ts';
import { coldOnly } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';
import { lossAt } from '../hydraulics/curve.ts';
import { pipeRating } from '../hydraulics/pipe-rating.ts';
import { supplyPressure, supplyStatic } from '../hydraulics/supply-pressure.ts';
import { deviceOf } from '../network/device-of.ts';
import type { Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding, Mend } from './finding.ts';
import { isOver } from './over.ts';

/** The fixture under the highest static pressure, where that is over what the code allows. */
export function judgeStatic(network: Network, { staticPressure }: Solution): Finding[] {
  const limit = citeValue(profiles[network.basis.profile].limits.maximumStatic);
  const worst = network.inlets.reduce<number | undefined>(
    (highest, { run }) =>
      highest === undefined || staticPressure[run]! > staticPressure[highest]! ? run : highest,
    undefined,
  );
  if (worst === undefined || !isOver(staticPressure[worst]!, limit.value)) return [];
  const valve = pathTo(network, worst).findLast((at) => deviceOf(network, at)?.device === 'reducing-valve');
  return [
    {
      code: 'static-high',
      severity: 'error',
      source: limit,
      run: network.runs[worst]!.id,
      pressure: staticPressure[worst]!,
      limit: limit.value,
      mend:
        valve === undefined
          ? { do: 'add-reducing-valve' }
          : loweredSetting(network, valve, staticPressure[worst]! - limit.value),
    },
  ];
}

/** The reducing valve that is there, set below what it lets through at rest by what is too much. */
function loweredSetting(network: Network, run: number, by: number): Mend {
  const through = network.staticPressure[run]! + lossAt(network.devices[network.deviceAt[run]!]!.curve, 0);
  return { do: 'lower-setting', run: network.runs[run]!.id, set: through - by };
}

/** A street that gives less at rest than the code's least, at its daily low. */
export function judgeStreet({ basis, supply, runs }: Network): Finding[] {
  const { minimumStatic } = profiles[basis.profile].limits;
  if (minimumStatic === undefined) return [];
  const limit = citeValue(minimumStatic);
  const pressure = supplyPressure(supply, 0);
  if (pressure >= limit.value) return [];
  return [
    {
      code: 'static-low',
      severity: 'warning',
      source: limit,
      run: runs[0]!.id,
      pressure,
      limit: limit.value,
    },
  ];
}

/** Temperature of the water in a run, K. */
export function temperatureOf({ basis, hot }: Network, at: number): number {
  return (hot[at] === 1 ? basis.hotTemperature : basis.coldTemperature).si;
}

/** Static pressure at the lower end of a run, Pa, in front of its device. */
export function highestStatic(
  { parent, staticPressure, elevationLoss, supply }: Network,
  at: number,
): number {
  const above = parent[at]!;
  const start = above < 0 ? supplyStatic(supply) : staticPressure[above]!;
  return Math.max(start, start - elevationLoss[at]!);
}

/**
 * Runs whose pipe is not rated for the static pressure at its lower end, at the temperature it carries, and runs
 * hotter than their rating goes; hot runs of pipe that is for cold water only.
 */
export function judgeRating(network: Network): Finding[] {
  const findings: Finding[] = [];
  network.runs.forEach(({ id: run, material, size }, at) => {
    const temperature = temperatureOf(network, at);
    const limit = pipeRating(material, size, temperature);
    const { rating: source, hotMaterial } = profiles[network.basis.profile].rules;
    if (network.hot[at] === 1 && coldOnly.has(material)) {
      findings.push({
        code: 'material-cold-only',
        severity: 'error',
        source: hotMaterial,
        run,
        material,
        temperature,
      });
      return;
    }
    if (limit === undefined) {
      findings.push({ code: 'rating-unknown', severity: 'warning', source, run, temperature });
      return;
    }
    const pressure = highestStatic(network, at);
    if (pressure <= limit) return;
    findings.push({ code: 'rating-exceeded', severity: 'error', source, run, pressure, temperature, limit });
  });
  return findings;
}
