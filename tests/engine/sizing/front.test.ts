import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Choice,
  cheapestWithin,
  extend,
  type Front,
  join,
  joinAll,
  pointFront,
  union,
} from '../../../engine/sizing/front.ts';

type Point = readonly [cost: number, need: number];

const frontOf = (...points: Point[]): Front => ({
  cost: Float64Array.from(points, ([cost]) => cost),
  need: Float64Array.from(points, ([, need]) => need),
});
const pointsOf = ({ cost, need }: Front): Point[] => Array.from(cost, (one, at) => [one, need[at]!]);

/** Points that no other beats, by comparing each with each. */
function best(points: readonly Point[]): Point[] {
  const kept = points.filter(
    ([cost, need]) =>
      !points.some((other) => other[0] <= cost && other[1] <= need && (other[0] < cost || other[1] < need)),
  );
  return [...new Map(kept.map((point) => [point.join(), point])).values()].sort(
    (one, other) => one[0] - other[0],
  );
}

const arbitraryFront = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 })), {
    minLength: 1,
    maxLength: 12,
  })
  .map((points) => frontOf(...best(points)));
const arbitraryChoices: fc.Arbitrary<Choice[]> = fc.array(
  fc.record({ cost: fc.integer({ min: 0, max: 20 }), loss: fc.integer({ min: 0, max: 20 }) }),
  { minLength: 1, maxLength: 5 },
);

describe('join', () => {
  it('adds costs and takes the larger need', () => {
    // 1 + 5 at 30 against 20; then the first has to improve: 4 + 5 at 20; then both: 9 + 7 at 10.
    const joined = join(frontOf([1, 30], [4, 15], [9, 10]), frontOf([5, 20], [7, 10]));
    expect(pointsOf(joined)).toEqual([
      [6, 30],
      [9, 20],
      [11, 15],
      [16, 10],
    ]);
  });

  it('is the best of all pairs', () => {
    fc.assert(
      fc.property(arbitraryFront, arbitraryFront, (one, other) => {
        const pairs = pointsOf(one).flatMap(([c, n]) =>
          pointsOf(other).map(([cost, need]): Point => [c + cost, Math.max(n, need)]),
        );
        expect(best(pointsOf(join(one, other)))).toEqual(best(pairs));
      }),
    );
  });

  it('is empty where one of them is, and joins any number in pairs', () => {
    expect(pointsOf(join(frontOf(), frontOf([1, 1])))).toEqual([]);
    expect(pointsOf(joinAll([]))).toEqual([[0, Number.NEGATIVE_INFINITY]]);
    fc.assert(
      fc.property(fc.array(arbitraryFront, { minLength: 1, maxLength: 5 }), (fronts) => {
        const oneByOne = fronts.slice(1).reduce((joined, front) => join(joined, front), fronts[0]!);
        expect(best(pointsOf(joinAll(fronts)))).toEqual(best(pointsOf(oneByOne)));
      }),
    );
  });
});

describe('extend', () => {
  it('shifts by every choice and keeps what no other beats, with how it was made', () => {
    // From (2, 10) and (5, 4): small pipe (1, 6) gives (3, 16), (6, 10); large pipe (3, 1) gives (5, 11), (8, 5).
    const made = extend(frontOf([2, 10], [5, 4]), [
      { cost: 1, loss: 6 },
      { cost: 3, loss: 1 },
    ]);
    expect(pointsOf(made)).toEqual([
      [3, 16],
      [5, 11],
      [6, 10],
      [8, 5],
    ]);
    expect([...made.choice]).toEqual([0, 1, 0, 1]);
    expect([...made.upon]).toEqual([0, 0, 1, 1]);
  });

  it('is the best of all pairs of a point and a choice', () => {
    fc.assert(
      fc.property(arbitraryFront, arbitraryChoices, (behind, choices) => {
        const made = extend(behind, choices);
        const all = pointsOf(behind).flatMap(([c, n]) =>
          choices.map(({ cost, loss }): Point => [c + cost, n + loss]),
        );
        expect(pointsOf(made)).toEqual(best(all));
        pointsOf(made).forEach(([cost, need], at) => {
          const { cost: extra, loss } = choices[made.choice[at]!]!;
          expect([behind.cost[made.upon[at]!]! + extra, behind.need[made.upon[at]!]! + loss]).toEqual([
            cost,
            need,
          ]);
        });
      }),
    );
  });

  it('drops what needs more than there can be, and all but the cheapest of what there always is', () => {
    fc.assert(
      fc.property(
        arbitraryFront,
        arbitraryChoices,
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 60 }),
        (behind, choices, one, other) => {
          const [least, most] = [Math.min(one, other), Math.max(one, other)];
          const whole = pointsOf(extend(behind, choices)).filter(([, need]) => need <= most);
          const always = whole.findIndex(([, need]) => need <= least);
          expect(pointsOf(extend(behind, choices, { most, least }))).toEqual(
            always === -1 ? whole : whole.slice(0, always + 1),
          );
        },
      ),
    );
  });

  it('within a tolerance has for every point one that costs no more and needs at most that much more', () => {
    fc.assert(
      fc.property(
        arbitraryFront,
        arbitraryChoices,
        fc.integer({ min: 0, max: 15 }),
        (behind, choices, tolerance) => {
          const rough = pointsOf(extend(behind, choices, undefined, tolerance));
          for (const [cost, need] of pointsOf(extend(behind, choices))) {
            expect(rough.some(([c, n]) => c <= cost && n <= need + tolerance)).toBe(true);
          }
        },
      ),
    );
  });

  it('grows past the room it starts with', () => {
    const behind = frontOf(...Array.from({ length: 40 }, (_, at): Point => [at * 10, 400 - at * 10]));
    const choices = Array.from({ length: 10 }, (_, at) => ({ cost: at, loss: 9 - at }));
    const all = pointsOf(behind).flatMap(([c, n]) =>
      choices.map(({ cost, loss }): Point => [c + cost, n + loss]),
    );
    const made = extend(behind, choices);
    expect(made.cost.length).toBe(400);
    expect(pointsOf(made)).toEqual(best(all));
  });
});

describe('union', () => {
  it('is the best of all points', () => {
    fc.assert(
      fc.property(fc.array(arbitraryFront, { maxLength: 4 }), (fronts) => {
        expect(pointsOf(union(fronts))).toEqual(best(fronts.flatMap(pointsOf)));
      }),
    );
  });
});

describe('cheapestWithin', () => {
  it('is the first point that needs no more', () => {
    fc.assert(
      fc.property(arbitraryFront, fc.integer({ min: -1, max: 41 }), (front, available) => {
        expect(cheapestWithin(front, available)).toBe(
          pointsOf(front).findIndex(([, need]) => need <= available),
        );
      }),
    );
    expect(cheapestWithin(pointFront(3, 7), 7)).toBe(0);
  });
});
