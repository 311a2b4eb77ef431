import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Run } from '../../engine/job/job.ts';
import { buildNetwork } from '../../engine/network/build-network.ts';
import { ledger } from '../../engine/network/ledger.ts';
import { lowestCommonRun } from '../../engine/network/lowest-common-run.ts';
import { orderRuns } from '../../engine/network/order-runs.ts';
import { solve } from '../../engine/network/solve.ts';
import { cold, fixture, ft, job, psi, run } from '../jobs/written-job.ts';

/** Trees by the parent of each run; every parent stands before. */
const parents = fc
  .array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 60 })
  .map((draws) => draws.map((draw, index) => (index === 0 ? -1 : draw % index)));

function runsOf(above: readonly number[]): Run[] {
  return above.map((parent, index) => run(`R${index}`, parent < 0 ? 'street' : `R${parent}`));
}

const schemeOf = (runs: readonly Run[]) => ({ id: 'only', name: 'Only', runs });

describe('the order of runs', () => {
  const shuffled = parents.chain((above) =>
    fc.shuffledSubarray(runsOf(above), { minLength: above.length }).map((runs) => ({ above, runs })),
  );

  it('puts every run after the one that feeds it, and what it feeds in one stretch', async () => {
    await fc.assert(
      fc.property(shuffled, ({ runs }) => {
        const ordered = orderRuns(schemeOf(runs));
        expect(ordered.ok).toBe(true);
        if (!ordered.ok) return;
        const { indexAt, parent, subtreeEnd } = ordered.order;
        expect([...indexAt].sort((one, other) => one - other)).toEqual([...runs.keys()]);
        indexAt.forEach((index, position) => {
          const above = parent[position]!;
          expect(above).toBeLessThan(position);
          const from = above < 0 ? 'street' : runs[indexAt[above]!]!.id;
          expect(runs[index]!.from).toBe(from);
          // Naive: everything whose way to the street leads through here.
          const below = [...indexAt.keys()].filter((other) => {
            let at = other;
            while (at > position) at = parent[at]!;
            return at === position;
          });
          expect(below.at(0)).toBe(position);
          expect(below.length).toBe(subtreeEnd[position]! - position);
          expect(below.at(-1)).toBe(subtreeEnd[position]! - 1);
        });
      }),
    );
  });

  it('names a missing parent, a second service, a loop and a name used twice, each by its runs', async () => {
    await fc.assert(
      fc.property(parents, fc.nat({ max: 1000 }), (above, which) => {
        const good = runsOf(above);
        const chosen = which % good.length;
        const codes = (runs: readonly Run[]): string[] => {
          const ordered = orderRuns(schemeOf(runs));
          return ordered.ok ? [] : ordered.defects.map(({ code }) => code);
        };
        expect(codes(good)).toEqual([]);
        expect(codes([...good, run('lost', 'nowhere')])).toEqual(['parent-missing']);
        expect(codes([...good, run('second', 'street')])).toEqual(['several-services']);
        expect(codes([...good, run('a', 'b'), run('b', 'a')])).toEqual(['loop']);
        expect(codes([...good, run('itself', 'itself')])).toEqual(['loop']);
        expect(codes([...good, run(good[chosen]!.id, 'R0')])).toEqual(['run-twice']);
        expect(codes([...good, run('street', 'R0')])).toEqual(['run-named-street']);
      }),
    );
  });

  it('names all defects of a list at once', () => {
    const runs = [
      run('A', 'street'),
      run('B', 'street'),
      run('C', 'nowhere'),
      run('A', 'B'),
      run('D', 'E'),
      run('E', 'D'),
    ];
    const ordered = orderRuns(schemeOf(runs));
    expect(ordered.ok).toBe(false);
    if (ordered.ok) return;
    expect(ordered.defects).toEqual(
      expect.arrayContaining([
        { code: 'run-twice', run: 'A' },
        { code: 'parent-missing', run: 'C', from: 'nowhere' },
        { code: 'several-services', runs: ['A', 'B'] },
        { code: 'loop', runs: ['E', 'D'] },
      ]),
    );
    expect(ordered.defects).toHaveLength(4);
  });

  it('names an empty list and a list without a service', () => {
    expect(orderRuns(schemeOf([]))).toEqual({ ok: false, defects: [{ code: 'no-runs', scheme: 'only' }] });
    // Water would go from C to B to A and back to C.
    const loop = orderRuns(schemeOf([run('A', 'B'), run('B', 'C'), run('C', 'A')]));
    expect(loop).toEqual({ ok: false, defects: [{ code: 'loop', runs: ['C', 'B', 'A'] }] });
  });

  it('names two loops and what hangs on them once', () => {
    const runs = [
      run('A', 'street'),
      run('B', 'C'),
      run('C', 'B'),
      run('D', 'C'),
      run('E', 'E'),
      run('F', 'D'),
    ];
    expect(orderRuns(schemeOf(runs))).toEqual({
      ok: false,
      defects: [
        { code: 'loop', runs: ['C', 'B'] },
        { code: 'loop', runs: ['E'] },
      ],
    });
  });
});

describe('the lowest common run', () => {
  it('is what a walk to the street from both finds', async () => {
    await fc.assert(
      fc.property(parents, fc.nat(), fc.nat(), (above, first, second) => {
        const ordered = orderRuns(schemeOf(runsOf(above)));
        if (!ordered.ok) throw new Error('not a tree');
        const { parent, subtreeEnd } = ordered.order;
        const meet = lowestCommonRun(parent, subtreeEnd);
        const one = first % above.length;
        const other = second % above.length;
        const way = new Set<number>();
        for (let at = one; at >= 0; at = parent[at]!) way.add(at);
        let naive = other;
        while (!way.has(naive)) naive = parent[naive]!;
        expect(meet(one, other)).toBe(naive);
        expect(meet(other, one)).toBe(naive);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a line of 200 000 runs', () => {
  const size = 200_000;
  const runs = Array.from({ length: size }, (_, index) =>
    run(`R${index}`, index === 0 ? 'street' : `R${index - 1}`, {
      size: '2',
      length: ft(0.001),
      ...(index === size - 1 ? { end: cold('last') } : {}),
    }),
  );
  // The file may hold them the other way round.
  const deep = job([fixture('last', 'water-closet-tank')], [...runs].reverse());

  it('builds, solves and keeps its books', () => {
    const built = buildNetwork(deep);
    expect(built.ok).toBe(true);
    if (!built.ok) return;
    const { network } = built;
    const solution = solve(network);
    expect(solution.flow[0]).toBe(solution.flow[size - 1]);
    const gradient = solution.gradient[0]!;
    const expected = psi(60).si - gradient * size * ft(0.001).si;
    expect(Math.abs(solution.residual[size - 1]! - expected)).toBeLessThan(0.01);
    expect(ledger(network, solution, size - 1)).toHaveLength(size);
    expect(lowestCommonRun(network.parent, network.subtreeEnd)(0, size - 1)).toBe(0);
  });

  it('is named as a loop when its ends are joined', () => {
    const joined = {
      id: 'only',
      name: 'Only',
      runs: [{ ...runs[0]!, from: `R${size - 1}` }, ...runs.slice(1)],
    };
    const ordered = orderRuns(joined);
    expect(ordered.ok).toBe(false);
    if (ordered.ok) return;
    expect(ordered.defects).toHaveLength(1);
    const [defect] = ordered.defects;
    expect(defect?.code === 'loop' && defect.runs.length).toBe(size);
  });
});
