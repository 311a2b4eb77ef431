import { type FixtureKind, type FixtureKindId, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { type FittingKind, fullWay, shutOffs } from '../../tables/pipe/names.ts';
import { profiles } from '../../tables/profiles.ts';
import type { Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import type { Finding } from './finding.ts';

/** Whether a valve of the given kinds stands on the run. */
function shuts(network: Network, at: number, kinds: ReadonlySet<FittingKind> = shutOffs): boolean {
  return network.runs[at]!.fittings.some(({ kind, count }) => count > 0 && kinds.has(kind));
}

/** Missing shut-offs: of the whole building, of what stands outdoors, of a manifold's ports. */
export function judgeShutOffs(network: Network): Finding[] {
  const { size, parent, runs } = network;
  const fed = new Int32Array(size);
  for (let at = 1; at < size; at++) fed[parent[at]!]!++;
  const main: number[] = [0];
  while (fed[main.at(-1)!] === 1 && main.at(-1)! + 1 < size) main.push(main.at(-1)! + 1);
  const findings: Finding[] = [];
  const { mainShutOff, outdoorShutOff, manifoldShutOff } = profiles[network.basis.profile].rules;
  const missing = (where: 'main' | 'outdoor' | 'manifold', at: number): void => {
    const source = { main: mainShutOff, outdoor: outdoorShutOff, manifold: manifoldShutOff }[where];
    const run = runs[at]!.id;
    findings.push({
      code: 'shut-off-missing',
      severity: where === 'main' ? 'error' : 'warning',
      source,
      where,
      run,
      mend: { do: 'add-shut-off', run },
    });
  };
  if (!main.some((at) => shuts(network, at, fullWay))) missing('main', main.at(-1)!);

  for (const { fixture, run: at } of network.inlets) {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    if (!kind.outdoor) continue;
    const path = pathTo(network, at);
    const apart = path.filter((run) => !main.includes(run));
    // Where the whole building is one line to an outdoor outlet, the main's valve is the outlet's too.
    const own = apart.length === 0 ? path : apart;
    if (!own.some((run) => shuts(network, run))) missing('outdoor', at);
  }
  for (const { device, run: at } of network.devices) {
    if (device.device !== 'manifold' || device.valved) continue;
    for (let child = at + 1; child < network.subtreeEnd[at]!; child = network.subtreeEnd[child]!) {
      if (!shuts(network, child)) missing('manifold', child);
    }
  }
  return findings;
}

/** The cautions against cross-connection: outlets that take a hose or stand in the ground, and what fills a boiler. */
export function judgeCrossConnections(network: Network): Finding[] {
  const { hoseConnection, makeUp } = profiles[network.basis.profile].rules;
  const ids = (wanted: (kind: FixtureKindId) => boolean): string[] =>
    network.job.fixtures.filter(({ kind }) => wanted(kind)).map(({ id }) => id);
  const outdoor = ids((kind) => (fixtureKinds[kind] as FixtureKind).outdoor === true);
  const filling = ids((kind) => kind === 'make-up');
  const findings: Finding[] = [];
  if (outdoor.length > 0) {
    findings.push({ code: 'hose-outlets', severity: 'note', source: hoseConnection, fixtures: outdoor });
  }
  if (filling.length > 0) {
    findings.push({ code: 'make-up-unprotected', severity: 'note', source: makeUp, fixtures: filling });
  }
  return findings;
}
