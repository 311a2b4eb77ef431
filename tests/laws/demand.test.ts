import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '../../engine/job/job.ts';
import { buildNetwork } from '../../engine/network/build-network.ts';
import type { Network, UnitSource } from '../../engine/network/network.ts';
import { solve } from '../../engine/network/solve.ts';
import { arbitraryHouse } from '../arbitrary/house.ts';
import { arbitraryJob } from '../arbitrary/job.ts';
import { networkOf } from '../jobs/written-job.ts';
import { countBySets } from './count-by-sets.ts';

const anyJob = fc.oneof(arbitraryJob, arbitraryHouse);
const sum = (values: readonly { readonly value: number }[]): number =>
  values.reduce((total, { value }) => total + value, 0);

/** What one source adds at its run, by its own figures. */
function amountOf(source: UnitSource): number {
  switch (source.what) {
    case 'inlet':
      return source.fixture.count * source.each.value;
    case 'both sides':
      return source.fixture.count * (source.total.value - source.cold.value - source.hot.value);
    case 'group':
      return source.value.value - sum(source.members);
    case 'group ends':
      return sum(source.members) - source.value.value;
  }
}

function fedBy(network: Network, at: number): number[] {
  const fed: number[] = [];
  network.parent.forEach((above, child) => {
    if (above === at) fed.push(child);
  });
  return fed;
}

describe('fixture units of a run', () => {
  it('are those of the runs it feeds and of its own sources', async () => {
    await fc.assert(
      fc.property(anyJob, (job) => {
        const network = networkOf(job);
        const { units } = network.served;
        for (let at = 0; at < network.size; at++) {
          const own = network.sources.units[at]!.reduce((total, source) => total + amountOf(source), 0);
          const fed = fedBy(network, at).reduce((total, child) => total + units[child]!, 0);
          expect(units[at]!).toBeCloseTo(fed + own, 5);
        }
      }),
    );
  });

  it('and its design flow are what a count by sets of inlets gives', async () => {
    await fc.assert(
      fc.property(arbitraryHouse, (house) => {
        const network = networkOf(house);
        const { units, flow } = solve(network);
        const counted = countBySets(house);
        network.runs.forEach(({ id }, at) => {
          expect(units[at]!, `units of ${id}`).toBeCloseTo(counted.get(id)!.units, 5);
          expect(flow[at]! * 1e6, `flow of ${id}`).toBeCloseTo(counted.get(id)!.flow * 1e6, 2);
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe('design flow', () => {
  it('is never less than that of any run fed, nor than what any fixture behind it needs', async () => {
    await fc.assert(
      fc.property(anyJob, (job) => {
        const network = networkOf(job);
        const { flow } = solve(network);
        network.parent.forEach((above, at) => {
          if (above >= 0) expect(flow[above]!).toBeGreaterThanOrEqual(flow[at]!);
        });
        for (const { run, requiredFlow } of network.inlets) {
          expect(flow[run]!).toBeGreaterThanOrEqual(requiredFlow * (1 - 1e-12));
        }
      }),
    );
  });

  it('never falls, and no residual rises, when a fixture is counted once more', async () => {
    await fc.assert(
      fc.property(arbitraryHouse, fc.nat({ max: 100 }), (house, which) => {
        const chosen = which % house.fixtures.length;
        const more: Job = {
          ...house,
          fixtures: house.fixtures.map((fixture, index) =>
            index === chosen ? { ...fixture, count: fixture.count + 1 } : fixture,
          ),
        };
        const before = solve(networkOf(house));
        const after = solve(networkOf(more));
        before.flow.forEach((flow, at) => {
          expect(after.flow[at]!).toBeGreaterThanOrEqual(flow * (1 - 1e-9));
          expect(after.residual[at]!).toBeLessThanOrEqual(before.residual[at]! + 1e-6);
        });
      }),
    );
  });
});

describe('every valid job', () => {
  it('builds and solves to finite figures', async () => {
    await fc.assert(
      fc.property(anyJob, (job) => {
        const built = buildNetwork(job);
        expect(built.ok).toBe(true);
        if (!built.ok) return;
        const solution = solve(built.network);
        for (const values of [solution.flow, solution.velocity, solution.residual, solution.staticPressure]) {
          expect(values.every(Number.isFinite)).toBe(true);
        }
      }),
    );
  });
});
