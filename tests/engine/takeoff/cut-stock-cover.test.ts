import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestCover } from '../../../engine/takeoff/cut-stock-cover.ts';
import type { Room } from '../../../engine/takeoff/cut-stock-load.ts';

const roomsOf = (...sizes: readonly (readonly [capacity: number, cost: number])[]): Room[] =>
  sizes.map(([capacity, cost], stock) => ({ stock, capacity, cost }));

/** Every number of every room up to what alone would do. */
function leastByEnumeration(need: number, rooms: readonly Room[]): number {
  const [first, ...others] = rooms;
  if (need <= 0) return 0;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= Math.ceil(need / first.capacity); count++)
    least = Math.min(least, count * first.cost + leastByEnumeration(need - count * first.capacity, others));
  return least;
}

describe('the cheapest stock that is long enough', () => {
  it('is what enumeration finds', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.array(fc.tuple(fc.integer({ min: 5, max: 90 }), fc.integer({ min: 1, max: 100 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (need, sizes) => {
          const rooms = roomsOf(...sizes);
          const { counts, cost } = cheapestCover(need, rooms, 'enough');
          expect(cost).toBe(leastByEnumeration(need, rooms));
          expect(cheapestCover(need, rooms, 'bound').cost).toBe(cost);
          expect(counts.reduce((sum, count, at) => sum + count * rooms[at]!.cost, 0)).toBe(cost);
          expect(
            counts.reduce((sum, count, at) => sum + count * rooms[at]!.capacity, 0),
          ).toBeGreaterThanOrEqual(need);
        },
      ),
    );
  });

  it('stays on the right side where lengths have to be rounded', () => {
    // 2 999 999 is prime and odd: no common divisor, and five steps of the coarsest grid to one unit.
    const rooms = roomsOf([2_999_999, 30], [1_000_003, 11]);
    for (const need of [1, 900_000_000, 2_999_999 * 333, 2_999_999 * 333 + 1]) {
      const enough = cheapestCover(need, rooms, 'enough');
      expect(enough.counts[0]! * 2_999_999 + enough.counts[1]! * 1_000_003).toBeGreaterThanOrEqual(need);
      const bound = cheapestCover(need, rooms, 'bound').cost;
      expect(bound).toBeLessThanOrEqual(Math.ceil(need / 2_999_999) * 30);
      expect(bound).toBeLessThanOrEqual(enough.cost);
      expect(enough.cost).toBeLessThanOrEqual(1.02 * bound + 30);
    }
  });
});
