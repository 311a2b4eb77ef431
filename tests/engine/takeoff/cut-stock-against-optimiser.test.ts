import { describe, it } from 'vitest';
import { compareCutLists } from './cut-stock-against-optimiser.ts';

describe('a packing of up to 6 pieces', () => {
  it('costs what a mixed-integer programme proves least, on 15 random lists', async () => {
    await compareCutLists(
      Array.from({ length: 15 }, (_, at) => 1000 + at),
      6,
    );
  });
});
