import { citeValue } from '../../tables/look-up.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { pressureRatings } from '../../tables/pipe/ratings.ts';
import { profiles } from '../../tables/profiles.ts';
import { rules } from '../../tables/rules.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { readCurve } from '../hydraulics/water.ts';
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

/**
 * Runs whose pipe is not rated for the static pressure at its lower end, at the temperature it carries, and runs
 * hotter than their rating goes.
 */
export function judgeRating(network: Network, solution: Solution): Finding[] {
  const { basis, size, parent } = network;
  const findings: Finding[] = [];
  for (let at = 0; at < size; at++) {
    const run = network.runs[at]!;
    const temperature = (network.hot[at] === 1 ? basis.hotTemperature : basis.coldTemperature).si;
    const rating = pressureRatings[run.material].find(
      ({ sizesUpTo }) => nominalSizes[run.size]! <= sizesUpTo,
    );
    const above = parent[at]!;
    const start = above < 0 ? solution.supplyStatic : solution.staticPressure[above]!;
    const pressure = Math.max(start, start - solution.elevationLoss[at]!);
    const hottest = rating?.curve.points.at(-1)?.[0];
    if (rating === undefined || hottest === undefined || temperature > toSI(hottest, rating.curve.x) + 1e-9) {
      findings.push({
        code: 'rating-unknown',
        severity: 'warning',
        source: rules.rating,
        run: run.id,
        temperature,
      });
      continue;
    }
    const limit = readCurve(rating.curve, temperature);
    if (pressure <= limit) continue;
    findings.push({
      code: 'rating-exceeded',
      severity: 'error',
      source: rules.rating,
      run: run.id,
      pressure,
      temperature,
      limit,
    });
  }
  return findings;
}
