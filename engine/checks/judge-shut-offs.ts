import { type FixtureKind, fixtureKinds } from '../../tables/fixtures/kinds.ts';
import { shutOffs } from '../../tables/pipe/names.ts';
import { rules } from '../../tables/rules.ts';
import type { Network } from '../network/network.ts';
import { pathTo } from '../network/path.ts';
import type { Finding } from './finding.ts';

/** Whether a valve on the run closes it. */
function shuts(network: Network, at: number): boolean {
  return network.runs[at]!.fittings.some(({ kind, count }) => count > 0 && shutOffs.has(kind));
}

/** Missing shut-offs: of the whole building, of what stands outdoors, of a manifold's ports. */
export function judgeShutOffs(network: Network): Finding[] {
  const { size, parent, runs } = network;
  const fed = new Int32Array(size);
  for (let at = 1; at < size; at++) fed[parent[at]!]!++;
  const main: number[] = [0];
  while (fed[main.at(-1)!] === 1 && main.at(-1)! + 1 < size) main.push(main.at(-1)! + 1);
  const findings: Finding[] = [];
  const missing = (where: 'main' | 'outdoor' | 'manifold', at: number): void => {
    const source = {
      main: rules.mainShutOff,
      outdoor: rules.outdoorShutOff,
      manifold: rules.manifoldShutOff,
    }[where];
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
  if (!main.some((at) => shuts(network, at))) missing('main', main.at(-1)!);

  for (const { fixture, run: at } of network.inlets) {
    const kind: FixtureKind = fixtureKinds[fixture.kind];
    if (!kind.outdoor) continue;
    const own = pathTo(network, at).filter((run) => !main.includes(run));
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

/** The caution against cross-connection for outlets that take a hose. */
export function judgeHoseOutlets(network: Network): Finding[] {
  const fixtures = network.job.fixtures.filter(({ kind }) => {
    const traits: FixtureKind = fixtureKinds[kind];
    return traits.outdoor;
  });
  if (fixtures.length === 0) return [];
  return [
    {
      code: 'hose-outlets',
      severity: 'note',
      source: rules.hoseConnection,
      fixtures: fixtures.map(({ id }) => id),
    },
  ];
}
