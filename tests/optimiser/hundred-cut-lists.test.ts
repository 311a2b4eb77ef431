import { describe, it } from 'vitest';
import { compareCutLists } from '../engine/takeoff/cut-stock-against-optimiser.ts';

/** One to three stock lengths, with and without a saw cut and prices, up to two pieces longer than any stock. */
describe('a hundred random cut lists of 4 to 12 pieces', () => {
  it.each(Array.from({ length: 10 }, (_, at) => 1 + at * 10))(
    'cost what a mixed-integer programme proves least, lists from %i on',
    async (from) => {
      await compareCutLists(
        Array.from({ length: 10 }, (_, at) => from + at),
        12,
      );
    },
  );
});
