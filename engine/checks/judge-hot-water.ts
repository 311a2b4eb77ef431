import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { citeValue } from '../../tables/look-up.ts';
import { profiles } from '../../tables/profiles.ts';
import { hotReach } from '../hotwater/hot-reach.ts';
import type { Network } from '../network/network.ts';
import type { InletResult } from '../network/report.ts';
import type { Finding } from './finding.ts';
import { isOver } from './over.ts';

/** Hot runs that are longer, or hold more water, than the basis allows between heater and tap. */
export function judgeHotReach(network: Network): Finding[] {
  const { hotLength, hotVolume } = profiles[network.basis.profile].limits;
  const longest = citeValue(hotLength);
  const largest = citeValue(hotVolume);
  const reach = hotReach(network);
  const findings: Finding[] = [];
  for (const { fixture, side, run: at } of network.inlets) {
    if (side !== 'hot') continue;
    const place = { run: network.runs[at]!.id, fixture: fixture.id };
    const length = reach.length[at]!;
    const volume = reach.volume[at]!;
    if (isOver(length, longest.value)) {
      findings.push({
        code: 'hot-length-long',
        severity: 'error',
        source: longest,
        ...place,
        length,
        limit: longest.value,
      });
    }
    if (isOver(volume, largest.value)) {
      findings.push({
        code: 'hot-volume-large',
        severity: 'note',
        source: largest,
        ...place,
        volume,
        limit: largest.value,
      });
    }
  }
  return findings;
}

/** Mixing valves whose hot and cold are left with pressures too far apart. */
export function judgeMixing(network: Network, inlets: readonly InletResult[]): Finding[] {
  const limit = citeValue(profiles[network.basis.profile].limits.hotColdApart);
  const cold = new Map<string, number>();
  for (const { inlet, residual } of inlets) if (inlet.side === 'cold') cold.set(inlet.fixture.id, residual);
  const findings: Finding[] = [];
  for (const { inlet, residual: hot } of inlets) {
    const kind: FixtureKind = fixtureKinds[inlet.fixture.kind];
    const other = cold.get(inlet.fixture.id);
    if (inlet.side !== 'hot' || !kind.mixing || other === undefined) continue;
    if (Math.abs(hot - other) <= limit.value) continue;
    findings.push({
      code: 'hot-cold-apart',
      severity: 'warning',
      source: limit,
      fixture: inlet.fixture.id,
      cold: other,
      hot,
      limit: limit.value,
    });
  }
  return findings;
}

/** The usual caution where stored water is hot enough to scald. */
export function judgeScald(network: Network): Finding[] {
  const limit = citeValue(profiles[network.basis.profile].limits.scaldTemperature);
  const temperature = network.basis.hotTemperature.si;
  const anyHot = network.inlets.some(({ side }) => side === 'hot');
  if (!anyHot || temperature <= limit.value) return [];
  return [{ code: 'hot-water-scalds', severity: 'note', source: limit, temperature, limit: limit.value }];
}
