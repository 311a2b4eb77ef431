import * as fc from 'fast-check';
import type { BusyKind } from '../../engine/demand/busy-fixtures.ts';

/** Kinds of fixtures with flows of whole steps, up to `most` of each. */
export function arbitraryKinds(kinds: number, most: number): fc.Arbitrary<BusyKind[]> {
  const kind = fc.record({
    count: fc.integer({ min: 0, max: most }),
    busy: fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000),
    flow: fc.integer({ min: 1, max: 60 }),
  });
  return fc.array(kind, { minLength: 1, maxLength: kinds });
}

/** A level between 0.5 and 0.999. */
export const arbitraryLevel = fc.integer({ min: 500, max: 999 }).map((thousandths) => thousandths / 1000);
