import { judge } from './checks/judge.ts';
import type { Network } from './network/network.ts';
import type { InletResult, Report } from './network/report.ts';
import { solve } from './network/solve.ts';
import { unverifiedOnPath } from './network/unverified.ts';

/** Solves a network and judges every inlet and every rule; the worst inlet by margin over its need comes first. */
export function report(network: Network): Report {
  const solution = solve(network);
  const inlets = network.inlets
    .map((inlet): InletResult => {
      const residual = solution.residual[inlet.run]!;
      return {
        inlet,
        residual,
        staticPressure: solution.staticPressure[inlet.run]!,
        margin: residual - inlet.requiredPressure,
      };
    })
    .sort((one, other) => one.margin - other.margin);
  const findings = judge(network, solution, inlets);
  const [worst] = inlets;
  return {
    network,
    solution,
    inlets,
    worst,
    findings,
    passes: worst !== undefined && !findings.some(({ severity }) => severity === 'error'),
    unverified: worst === undefined ? [] : unverifiedOnPath(network, solution, worst.inlet),
  };
}
