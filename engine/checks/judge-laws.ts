import { citeValue } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { rules } from '../../tables/rules.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { lossAlone } from '../network/loss-alone.ts';
import type { Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import type { InletResult } from '../network/report.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';

/** Whether the two friction laws part by more than the stated share, and by enough to matter, on the worst path. */
export function judgeLaws(network: Network, { flow }: Solution, worst: InletResult | undefined): Finding[] {
  if (worst === undefined) return [];
  const { lawsApart, lawsApartLeast } = profiles[network.basis.profile].limits;
  const limit = citeValue(lawsApart);
  const sum = (law: 'hazen-williams' | 'darcy-weisbach'): number =>
    pathTo(network, worst.inlet.run).reduce((total, at) => {
      const { pipe, fittings } = lossAlone(network, at, network.runs[at]!.size, flow[at]!, law);
      return total + pipe + fittings;
    }, 0);
  const hazenWilliams = sum('hazen-williams');
  const darcyWeisbach = sum('darcy-weisbach');
  const apart = Math.abs(darcyWeisbach - hazenWilliams);
  if (apart <= limit.value * hazenWilliams || apart <= citeValue(lawsApartLeast).value) return [];
  const run = network.runs[worst.inlet.run]!.id;
  return [{ code: 'laws-apart', severity: 'note', source: limit, run, hazenWilliams, darcyWeisbach }];
}

/** A foot: a rise typed to the nearest foot is no mistake. */
const heightTolerance = toSI(1, 'ft');

/** Inlets that the pipe's rises bring to another height than the schedule's level and height say. */
export function judgeHeights(network: Network): Finding[] {
  const levels = new Map(network.job.levels.map((level) => [level.id, level.elevation.si]));
  const findings: Finding[] = [];
  for (const { fixture, run: at } of network.inlets) {
    const floor = fixture.level === undefined ? undefined : levels.get(fixture.level);
    if (floor === undefined || fixture.height === undefined) continue;
    const scheduled = floor + fixture.height.si;
    const piped = network.elevation[at]!;
    if (Math.abs(piped - scheduled) <= heightTolerance) continue;
    findings.push({
      code: 'height-mismatch',
      severity: 'warning',
      source: rules.heights,
      run: network.runs[at]!.id,
      fixture: fixture.id,
      piped,
      scheduled,
    });
  }
  return findings;
}

/** Runs that end in nothing: stubs for later, or a fixture forgotten. */
export function judgeDeadEnds(network: Network): Finding[] {
  const findings: Finding[] = [];
  for (let at = 0; at < network.size; at++) {
    const run = network.runs[at]!;
    if (run.end !== undefined || network.subtreeEnd[at] !== at + 1) continue;
    findings.push({ code: 'dead-end', severity: 'note', source: rules.deadEnd, run: run.id });
  }
  return findings;
}
