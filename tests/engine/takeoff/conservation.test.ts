import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job, Run } from '../../../engine/job/job.ts';
import type { Network } from '../../../engine/network/network.ts';
import { differences } from '../../../engine/takeoff/differences.ts';
import { feetOf } from '../../../engine/takeoff/price-run.ts';
import type { TakeOffLine } from '../../../engine/takeoff/take-off.ts';
import { takeOff } from '../../../engine/takeoff/take-off-network.ts';
import type { FixtureKind } from '../../../tables/fixtures/kinds.ts';
import { fixtureKinds } from '../../../tables/fixtures/kinds.ts';
import { jointsOf } from '../../../tables/pipe/names.ts';
import { partKinds } from '../../../tables/takeoff/part-kinds.ts';
import { arbitraryHouse, houseAndShuffle } from '../../arbitrary/house.ts';
import { arbitraryJob } from '../../arbitrary/job.ts';
import { networkOf } from '../../jobs/written-job.ts';
import { counted, isGathered } from './counted.ts';

const jobs: fc.Arbitrary<Job> = fc.oneof(arbitraryHouse, arbitraryJob);
const sum = (lines: readonly TakeOffLine[], wanted: (line: TakeOffLine) => boolean): number =>
  lines.filter(wanted).reduce((total, { quantity }) => total + quantity.toNumber(), 0);
const drawn = (run: Run, ...kinds: readonly string[]): number =>
  run.fittings.reduce((total, { kind, count }) => total + (kinds.includes(kind) ? count : 0), 0);

const followers = ({ parent, size }: Network): number[] => {
  const counts = Array.from({ length: size }, () => 0);
  for (let at = 1; at < size; at++) counts[parent[at]!]!++;
  return counts;
};
const deviceOf = (run: Run) => (run.end !== undefined && 'device' in run.end ? run.end.device : undefined);

/** What fits on one pipe as on the other: tube of one outside diameter, and one way of joining. */
const body = (run: Run): string => {
  const metric = run.material === 'copper-en' || run.material === 'copper-thin';
  const material = run.material.startsWith('copper') ? `${metric ? 'metric ' : ''}copper` : run.material;
  return `${material} ${run.joint ?? jointsOf[run.material][0]}`;
};

/**
 * Ends of pipe that stand in fittings, by the pipe and not by the fittings: each length between two fittings has two.
 * A run has an end where it begins, unless it only goes on, and one where it ends; every fitting drawn in it cuts it
 * in two; nipples have two ends of their own.
 */
function pipeEnds(network: Network): number {
  const { runs, parent, inlets } = network;
  const follow = followers(network);
  const inletAt = new Map(inlets.map((inlet) => [inlet.run, inlet]));
  const reached = new Set<string>();
  let ends = 0;
  runs.forEach((run, at) => {
    const device = deviceOf(run);
    ends +=
      2 *
      drawn(
        run,
        'ell',
        'ell-45',
        'ball-valve',
        'gate-valve',
        'globe-valve',
        'butterfly-valve',
        'check-valve',
      );

    const from = runs[parent[at]!];
    const alone = from !== undefined && follow[parent[at]!] === 1 && deviceOf(from) === undefined;
    const same =
      alone && body(from) === body(run) && from.size === run.size && from.material === run.material;
    // Where it begins: not from the street, and not where it only goes on.
    if (from !== undefined && !same) ends += 1;
    // A coupling where the pipe changes is what changes it.
    const couplings = drawn(run, 'coupling');
    ends += 2 * (alone && !same && couplings > 0 ? couplings - 1 : couplings);

    const inlet = inletAt.get(at);
    if (inlet !== undefined) {
      const kind: FixtureKind = fixtureKinds[inlet.fixture.kind];
      // From a mixing valve to each outlet goes a pipe, which has two ends.
      const outlets = inlet.fixture.kind === 'bathtub-shower' ? 2 : 1;
      const first = kind.mixing && !reached.has(inlet.fixture.id) ? 2 * outlets : 0;
      reached.add(inlet.fixture.id);
      ends += inlet.fixture.count * (1 + first);
    } else {
      const only = follow[at] === 1 && device === undefined ? runs[parent.indexOf(at)]! : undefined;
      const goesOn =
        only !== undefined &&
        body(only) === body(run) &&
        only.size === run.size &&
        only.material === run.material;
      if (!goesOn) ends += 1;
    }
    const many = follow[at]! >= 2 && device !== 'manifold';
    if (!many) return;
    ends += 2 * (follow[at]! - 2);
    if (device !== undefined) ends += 2;
    for (let next = at + 1; next < runs.length; next++) {
      if (parent[next] === at && body(runs[next]!) !== body(run)) ends += 2;
    }
  });
  return ends;
}

describe('a take-off of any scheme', () => {
  it('has every length once', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const network = networkOf(job);
        const { lines, pieces } = takeOff(network);
        const feet = network.runs.reduce(
          (total, run) => feetOf(run.length).plus(total),
          feetOf({ typed: '', si: 0 }),
        );
        const pipe = lines.filter(({ article }) => article.kind === 'pipe');
        const taken = pipe.reduce(
          (total, { quantity }) => quantity.plus(total),
          feetOf({ typed: '', si: 0 }),
        );
        expect(taken.toString()).toBe(feet.toString());
        expect(pieces.map(({ run }) => run)).toEqual(network.runs.map(({ id }) => id));
        expect(pipe.flatMap(({ from }) => from.flatMap(({ runs }) => runs)).sort()).toEqual(
          network.runs.map(({ id }) => id).sort(),
        );
      }),
    );
  });

  it('has a tee less than followers at each junction', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const network = networkOf(job);
        const { lines } = takeOff(network);
        const expected = followers(network).reduce(
          (total, count, at) =>
            deviceOf(network.runs[at]!) === 'manifold' ? total : total + Math.max(0, count - 1),
          0,
        );
        expect(sum(lines, ({ article }) => article.kind === 'tee')).toBe(expected);
      }),
    );
  });

  it('has a joint for every end of pipe', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const network = networkOf(job);
        const { lines } = takeOff(network);
        expect(sum(lines, ({ article }) => partKinds[article.kind].group === 'joint')).toBe(
          pipeEnds(network),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('counts ells and valves as drawn', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const network = networkOf(job);
        const { lines } = takeOff(network);
        for (const kind of ['ell', 'ell-45', 'ball-valve', 'check-valve', 'curb-stop'] as const) {
          const expected = network.runs.reduce((total, run) => total + drawn(run, kind), 0);
          expect(
            sum(lines, ({ article }) => article.kind === kind),
            kind,
          ).toBe(expected);
        }
      }),
    );
  });

  it('gathers what is alike, each line the sum of where it comes from', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const taken = takeOff(networkOf(job));
        expect(isGathered(taken)).toBe(true);
        for (const { from, quantity } of taken.lines) {
          expect(quantity.greaterThan(0)).toBe(true);
          const added = from.reduce((total, one) => one.quantity.plus(total), quantity.times(0));
          expect(added.equals(quantity)).toBe(true);
        }
      }),
    );
  });

  it('comes to the same pipe and joints in whatever order the runs are written', () => {
    fc.assert(
      fc.property(houseAndShuffle, ({ house, runs }) => {
        const scheme = { ...house.schemes[0]!, runs };
        const one = counted(takeOff(networkOf(house)), ({ article }) => article.kind === 'pipe');
        const shuffled = takeOff(networkOf({ ...house, schemes: [scheme] }));
        const other = counted(shuffled, ({ article }) => article.kind === 'pipe');
        expect(Object.keys(other)).toEqual(Object.keys(one));
        for (const [key, feet] of Object.entries(one)) expect(other[key]).toBeCloseTo(feet, 9);
      }),
    );
  });

  it('differs from another by what is added and dropped, and from itself by nothing', () => {
    fc.assert(
      fc.property(jobs, jobs, (one, other) => {
        const [before, after] = [takeOff(networkOf(one)), takeOff(networkOf(other))];
        expect(differences(before, before)).toEqual({ added: [], dropped: [] });
        const { added, dropped } = differences(before, after);
        const back = differences(after, before);
        expect(back.added.map(({ by }) => by.toString())).toEqual(dropped.map(({ by }) => by.toString()));
        const all = (lines: readonly TakeOffLine[]): number => sum(lines, ({ unit }) => unit === 'each');
        const net = (list: typeof added): number =>
          list.reduce((total, { by, unit }) => total + (unit === 'each' ? by.toNumber() : 0), 0);
        expect(all(before.lines) + net(added) - net(dropped)).toBe(all(after.lines));
      }),
    );
  });
});
