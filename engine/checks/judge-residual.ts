import { rules } from '../../tables/rules.ts';
import type { Network } from '../network/network.ts';
import type { InletResult } from '../network/report.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';
import { mendResidual } from './mend-residual.ts';

/** Inlets that are left with less than their fixture needs, the shortest first, each with the change that helps. */
export function judgeResidual(
  network: Network,
  solution: Solution,
  inlets: readonly InletResult[],
): Finding[] {
  return inlets
    .filter(({ margin }) => margin < 0)
    .map(({ inlet, residual }): Finding => {
      const mend = mendResidual(network, solution, inlet);
      return {
        code: 'residual-short',
        severity: 'error',
        source: inlet.pressureFrom === 'maker' ? rules.makerNeed : inlet.pressureFrom,
        fixture: inlet.fixture.id,
        inlet: inlet.side,
        run: network.runs[inlet.run]!.id,
        residual,
        required: inlet.requiredPressure,
        ...(mend === undefined ? {} : { mend }),
      };
    });
}

/** The place where pressure falls below that of the air, if any: there is no such flow. */
export function judgeNegative(network: Network, { residual }: Solution): Finding[] {
  let lowest = 0;
  for (let at = 1; at < network.size; at++) if (residual[at]! < residual[lowest]!) lowest = at;
  const pressure = residual[lowest]!;
  if (pressure >= 0) return [];
  const run = network.runs[lowest]!.id;
  return [{ code: 'pressure-negative', severity: 'error', source: rules.pressureLeft, run, pressure }];
}
