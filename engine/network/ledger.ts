import type { Network } from './network.ts';
import { pathTo } from './path.ts';
import type { LedgerLine } from './report.ts';
import type { Solution } from './solution.ts';

/**
 * The path from the street to the end of a run as a ledger: what each run loses in pipe, fittings, height and
 * device, in the order in which the solver takes it off. Lines that change nothing are left out.
 */
export function ledger(network: Network, solution: Solution, position: number): LedgerLine[] {
  const lines: LedgerLine[] = [];
  let pressure = solution.supplyPressure;
  for (const run of pathTo(network, position)) {
    const losses = [
      ['pipe', solution.pipeLoss[run]!],
      ['fittings', solution.fittingLoss[run]!],
      ['elevation', solution.elevationLoss[run]!],
      ['device', solution.deviceLoss[run]!],
    ] as const;
    for (const [what, loss] of losses) {
      if (loss === 0) continue;
      const before = pressure;
      pressure -= loss;
      lines.push({ run, what, loss, before, after: pressure });
    }
  }
  return lines;
}
