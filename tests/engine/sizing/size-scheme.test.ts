import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../../engine/network/build-network.ts';
import type { Network } from '../../../engine/network/network.ts';
import { rebuild } from '../../../engine/network/rebuild.ts';
import { report } from '../../../engine/report.ts';
import { type Sized, type SizingRules, sizeScheme } from '../../../engine/sizing/size-scheme.ts';
import { nominalSizes } from '../../../tables/pipe/nominal-size.ts';
import { exampleNames, openExample } from '../../examples/open-example.ts';
import { cold, fixture, ft, job, networkOf, psi, run } from '../../jobs/written-job.ts';
import { shippedPrices } from './shipped-prices.ts';

const prices = await shippedPrices();
const free: SizingRules = { prices, keep: new Set() };

function sized(network: Network, rules: SizingRules): Sized {
  const result = sizeScheme(network, rules);
  if (!result.ok) throw new Error(JSON.stringify(result.unsized.why));
  return result.sized;
}

const networks: (readonly [string, Network])[] = [];
for (const name of exampleNames) {
  const built = buildNetwork(await openExample(name));
  if (!built.ok) throw new Error(name);
  networks.push([name, built.network]);
}

const limits = [
  'residual-short',
  'velocity-high',
  'fixture-supply-small',
  'service-small',
  'rating-exceeded',
  'rating-unknown',
];
const inches = ({ scheme }: Sized): Map<string, number> =>
  new Map(scheme.runs.map(({ id, size }) => [id, nominalSizes[size]!]));

describe.each(networks)('sizing %s', (_, network) => {
  it('holds every limit when it is built and solved again, at no more than what is drawn costs', () => {
    const { scheme, need, cost } = sized(network, free);
    const after = report(rebuild(network, scheme));
    expect(after.findings.filter(({ code }) => limits.includes(code))).toEqual([]);
    // What is left at the worst inlet is what the street gives beyond what was said to be needed; no valve is near.
    expect(after.worst!.margin).toBeGreaterThanOrEqual(-1e-6);
    expect(need).toBeLessThanOrEqual(after.solution.supplyPressure);
    const drawn = sized(network, { prices, keep: new Set(network.positionOf.keys()) });
    expect(drawn.scheme).toEqual(network.scheme);
    expect(cost).toBeLessThanOrEqual(drawn.cost);
  });

  it('keeps what is to be kept', () => {
    const keep = new Set(network.runs.filter((_one, at) => at % 3 === 0).map(({ id }) => id));
    const { scheme } = sized(network, { prices, keep });
    for (const one of network.scheme.runs) {
      if (keep.has(one.id)) expect(scheme.runs.find(({ id }) => id === one.id)).toEqual(one);
    }
  });

  it('makes no run larger than the one that feeds it, and costs no less for that', () => {
    // Stubs that carry nothing stay as drawn, so that they may not be larger than what feeds them: none is here.
    const tied = sized(network, { ...free, notLarger: true });
    const size = inches(tied);
    for (const { id, from } of tied.scheme.runs) {
      if (from !== 'street') expect(size.get(id)!, id).toBeLessThanOrEqual(size.get(from)!);
    }
    expect(tied.cost).toBeGreaterThanOrEqual(sized(network, free).cost);
    expect(report(rebuild(network, tied.scheme)).worst!.margin).toBeGreaterThanOrEqual(-1e-6);
  });

  it('keeps one pipe through a trunk', () => {
    const { runs, parent } = network;
    const last = runs.findIndex(
      (one, at) =>
        at > 2 &&
        one.material === runs[parent[at]!]!.material &&
        network.hot[at] === network.hot[parent[at]!] &&
        network.subtreeEnd[at]! > at + 1,
    );
    const trunk = new Set([runs[last]!.id, runs[parent[last]!]!.id]);
    const { scheme } = sized(network, { ...free, trunks: [trunk] });
    const pipes = scheme.runs
      .filter(({ id }) => trunk.has(id))
      .map(({ size, material }) => `${size} ${material}`);
    expect(pipes).toHaveLength(2);
    expect(new Set(pipes).size).toBe(1);
  });
});

describe('where nothing fits', () => {
  const house = (low: number, valve?: number): Network =>
    networkOf({
      ...job(
        [fixture('closet', 'water-closet-tank')],
        [
          run(
            'S',
            'street',
            valve === undefined ? {} : { end: { device: 'reducing-valve', set: psi(valve), curve: [] } },
          ),
          run('C', 'S', { rise: ft(40), length: ft(45), end: cold('closet') }),
        ],
      ),
      supply: { kind: 'static', elevation: ft(0), low: psi(low), high: psi(60) },
    });

  it('says which inlet is short and by how much with the largest pipes', () => {
    // 40 ft of water at 60 F weigh 17.3 psi, and the closet needs 8 or more: 20 psi cannot do.
    const network = house(20);
    const result = sizeScheme(network, free);
    if (result.ok || result.unsized.why !== 'short') throw new Error('it was sized');
    const { inlet, by, largest } = result.unsized;
    expect(inlet.fixture.id).toBe('closet');
    expect(largest.runs.map(({ size }) => size)).toEqual(['3', '3']);
    const { worst } = report(largest);
    expect(by).toBeCloseTo(-worst!.margin, 6);
    expect(sizeScheme(house(20 + by / 6894.757 + 0.01), free).ok).toBe(true);
    expect(sizeScheme(house(20 + by / 6894.757 - 0.01), free).ok).toBe(false);
  });

  it('has no answer at any pressure behind a valve that is set too low', () => {
    const result = sizeScheme(house(60, 20), free, { least: 0, most: 1e7 });
    expect(result.ok).toBe(false);
    expect(result.curve?.need.length).toBe(0);
  });

  it('says where only what is tied together stands in the way', () => {
    const network = house(60);
    // The service, kept at 3/4, may not be smaller than the branch, which is kept at 1.
    const small = rebuild(network, {
      ...network.scheme,
      runs: network.scheme.runs.map((one) => (one.id === 'S' ? { ...one, size: '3/4' } : one)),
    });
    const result = sizeScheme(small, { prices, keep: new Set(['S', 'C']), notLarger: true });
    expect(result).toMatchObject({ ok: false, unsized: { why: 'tied' } });
  });

  it('names the runs that have no pipe', () => {
    const nothing = { ...prices, pipe: new Map() };
    expect(sizeScheme(house(60), { prices: nothing, keep: new Set() })).toMatchObject({
      ok: false,
      unsized: { why: 'no-pipe', runs: ['S', 'C'] },
    });
  });
});
