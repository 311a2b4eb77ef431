import { lookUp } from '../../tables/look-up.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';
import { rules } from '../../tables/rules.ts';
import type { Cited } from '../../tables/table.ts';
import { largerSizes } from '../hydraulics/rising-sizes.ts';
import { velocity as velocityFormula } from '../hydraulics/velocity.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding, Mend, Rule } from './finding.ts';
import { isOver } from './over.ts';

/** The velocity limit of a run, m/s: the job's own, else its material's, cold or hot. */
export function velocityLimit(
  network: Network,
  at: number,
  material: MaterialId = network.runs[at]!.material,
): { value: number; source: Cited | Rule } {
  const { basis } = network;
  const side = network.hot[at] === 1 ? 'hot' : 'cold';
  const typed = side === 'hot' ? basis.velocityHot : basis.velocityCold;
  if (typed !== undefined) return { value: typed.si, source: rules.ownVelocity };
  const cited = lookUp(profiles[basis.profile].velocityLimits, material, side);
  return { value: cited.value, source: cited };
}

/** Runs in which the water is too fast, each with the least size that slows it enough. */
export function judgeVelocity(network: Network, solution: Solution): Finding[] {
  const findings: Finding[] = [];
  for (let at = 0; at < network.size; at++) {
    const limit = velocityLimit(network, at);
    const velocity = solution.velocity[at]!;
    if (!isOver(velocity, limit.value)) continue;
    const mend = mendVelocity(network, solution, at, limit.value);
    findings.push({
      code: 'velocity-high',
      severity: 'error',
      source: limit.source,
      run: network.runs[at]!.id,
      velocity,
      limit: limit.value,
      ...(mend === undefined ? {} : { mend }),
    });
  }
  return findings;
}

function mendVelocity(network: Network, solution: Solution, at: number, limit: number): Mend | undefined {
  const run = network.runs[at]!;
  const flow = solution.flow[at]!;
  const table = pipeDimensions[run.material];
  const velocity = (size: string): number =>
    velocityFormula.compute({ Q: flow, d: lookUp(table, size, 'bore').value });
  const size = largerSizes(table.rows, run.size).find((larger) => !isOver(velocity(larger), limit));
  return size === undefined ? undefined : { do: 'slower-pipe', run: run.id, size, velocity: velocity(size) };
}
