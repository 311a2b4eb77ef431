import { citeValue } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { rules } from '../../tables/rules.ts';
import { pipeRating } from '../hydraulics/pipe-rating.ts';
import { supplyStatic } from '../hydraulics/supply-pressure.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';

/** The fixture under the highest static pressure, where that is over what the code allows. */
export function judgeStatic(network: Network, { staticPressure }: Solution): Finding[] {
  const limit = citeValue(profiles[network.basis.profile].limits.maximumStatic);
  const worst = network.inlets.reduce<number | undefined>(
    (highest, { run }) =>
      highest === undefined || staticPressure[run]! > staticPressure[highest]! ? run : highest,
    undefined,
  );
  if (worst === undefined || staticPressure[worst]! <= limit.value) return [];
  return [
    {
      code: 'static-high',
      severity: 'error',
      source: limit,
      run: network.runs[worst]!.id,
      pressure: staticPressure[worst]!,
      limit: limit.value,
      mend: { do: 'add-reducing-valve' },
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
 * hotter than their rating goes.
 */
export function judgeRating(network: Network): Finding[] {
  const findings: Finding[] = [];
  network.runs.forEach(({ id: run, material, size }, at) => {
    const temperature = temperatureOf(network, at);
    const limit = pipeRating(material, size, temperature);
    const source = rules.rating;
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
