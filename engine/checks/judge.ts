import type { Network } from '../network/network.ts';
import type { InletResult } from '../network/report.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding, Severity } from './finding.ts';
import { judgeArresters } from './judge-arresters.ts';
import { judgeDevices, judgeSource } from './judge-devices.ts';
import { judgeExpansion } from './judge-expansion.ts';
import { judgeHotReach, judgeMixing, judgeScald } from './judge-hot-water.ts';
import { judgeDeadEnds, judgeHeights, judgeLaws } from './judge-laws.ts';
import { judgeNegative, judgeResidual } from './judge-residual.ts';
import { judgeCrossConnections, judgeShutOffs } from './judge-shut-offs.ts';
import { judgeFixtureSupplies, judgeManifolds, judgeService } from './judge-sizes.ts';
import { judgeRating, judgeStatic, judgeStreet } from './judge-static.ts';
import { judgeVelocity } from './judge-velocity.ts';

const rank: { readonly [severity in Severity]: number } = { error: 0, warning: 1, note: 2 };

/** Every rule over one solved network; errors first, in the order of the rules. */
export function judge(network: Network, solution: Solution, inlets: readonly InletResult[]): Finding[] {
  const findings: Finding[] = [
    ...judgeNegative(network, solution),
    ...judgeResidual(network, solution, inlets),
    ...judgeStatic(network, solution),
    ...judgeStreet(network),
    ...judgeVelocity(network, solution),
    ...judgeService(network),
    ...judgeFixtureSupplies(network, solution),
    ...judgeManifolds(network, solution),
    ...judgeDevices(network, solution),
    ...judgeSource(network, solution),
    ...judgeExpansion(network),
    ...judgeRating(network),
    ...judgeHotReach(network),
    ...judgeMixing(network, inlets),
    ...judgeShutOffs(network),
    ...judgeArresters(network, solution),
    ...judgeHeights(network),
    ...judgeLaws(network, solution, inlets[0]),
    ...judgeScald(network),
    ...judgeCrossConnections(network),
    ...judgeDeadEnds(network),
  ];
  return findings.sort((one, other) => rank[one.severity] - rank[other.severity]);
}
