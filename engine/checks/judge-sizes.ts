import { citeValue, hasCell, lookUp } from '../../tables/look-up.ts';
import { nominalSizes } from '../../tables/pipe/nominal-size.ts';
import { profiles } from '../../tables/profiles.ts';
import { rules } from '../../tables/rules.ts';
import { nominalInches } from '../hydraulics/nominal-inches.ts';
import type { Network } from '../network/network.ts';
import type { Solution } from '../network/solution.ts';
import type { Finding } from './finding.ts';
import { homeRunOf } from './least-supply.ts';
import { isOver } from './over.ts';

/** The service, where it is smaller than the code's least. */
export function judgeService(network: Network): Finding[] {
  const least = citeValue(profiles[network.basis.profile].limits.minimumService);
  const run = network.runs[0]!;
  if (nominalInches(run.size) >= least.printed) return [];
  return [
    {
      code: 'service-small',
      severity: 'error',
      source: least,
      run: run.id,
      size: run.size,
      least: nominalName(least.printed),
    },
  ];
}

/**
 * Pipes that end at a fixture and are smaller than the code's least supply. An individual line from a manifold may be
 * smaller, down to its own least, for the kinds that the code names, while it is short enough and the street gives
 * enough.
 */
export function judgeFixtureSupplies(network: Network, solution: Solution): Finding[] {
  const profile = profiles[network.basis.profile];
  const { homeRunLength, homeRunPressure, homeRunLeastSize, homeRunUsualSize } = profile.limits;
  const longest = citeValue(homeRunLength);
  const leastPressure = citeValue(homeRunPressure);
  const findings: Finding[] = [];
  for (const inlet of network.inlets) {
    const { fixture, run: at } = inlet;
    const row = profile.fixtureRows[fixture.kind].supply;
    if (row === null) continue;
    const least = lookUp(profile.supplySizes, row, 'size');
    const run = network.runs[at]!;
    const mayBeSmaller = profile.homeRunKinds.includes(fixture.kind);
    const line = mayBeSmaller ? homeRunOf(network, inlet) : undefined;
    const inches = line?.inches ?? nominalInches(run.size);
    if (inches < (line === undefined ? least.printed : homeRunLeastSize.printed)) {
      findings.push({
        code: 'fixture-supply-small',
        severity: 'error',
        source: least,
        run: run.id,
        fixture: fixture.id,
        size: run.size,
        least: nominalName(line === undefined ? least.printed : homeRunLeastSize.printed),
      });
      continue;
    }
    if (line === undefined || inches >= Math.max(least.printed, homeRunUsualSize.printed)) continue;
    if (isOver(line.length, longest.value)) {
      findings.push({
        code: 'home-run-long',
        severity: 'error',
        source: longest,
        run: run.id,
        length: line.length,
        limit: longest.value,
      });
    }
    if (solution.supplyPressure < leastPressure.value) {
      findings.push({
        code: 'home-run-pressure-low',
        severity: 'error',
        source: leastPressure,
        run: run.id,
        pressure: solution.supplyPressure,
        limit: leastPressure.value,
      });
    }
  }
  return findings;
}

/** Manifolds that carry more than the code lets through their size, and manifolds with too few ports. */
export function judgeManifolds(network: Network, solution: Solution): Finding[] {
  const table = profiles[network.basis.profile].manifoldCapacity;
  const findings: Finding[] = [];
  const used = new Map<number, number>();
  for (const above of network.parent) used.set(above, (used.get(above) ?? 0) + 1);
  for (const { device, run: at } of network.devices) {
    if (device.device !== 'manifold') continue;
    const run = network.runs[at]!;
    const ports = used.get(at) ?? 0;
    if (ports > device.ports) {
      findings.push({
        code: 'manifold-ports-short',
        severity: 'error',
        source: rules.manifoldPorts,
        run: run.id,
        ports: device.ports,
        used: ports,
      });
    }
    const column =
      run.material.startsWith('copper') || run.material === 'galvanized' ? 'metallic' : 'plastic';
    if (!hasCell(table, device.size, column)) continue;
    const limit = lookUp(table, device.size, column);
    const flow = solution.flow[at]!;
    if (!isOver(flow, limit.value)) continue;
    findings.push({
      code: 'manifold-over-capacity',
      severity: 'error',
      source: limit,
      run: run.id,
      size: device.size,
      flow,
      limit: limit.value,
    });
  }
  return findings;
}

/** The nominal size of so many inches. */
function nominalName(inches: number): string {
  const found = Object.entries(nominalSizes).find(([, value]) => value === inches);
  return found?.[0] ?? `${inches}`;
}
