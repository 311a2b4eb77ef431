import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPrices } from '../../../server/document/read-prices.ts';
import { writePrices } from '../../../server/document/write-prices.ts';
import { arbitraryPriceBook } from '../../arbitrary/price-book.ts';
import { smallBook } from '../../engine/takeoff/small-book.ts';

describe('writePrices', () => {
  it('gives back the same book when it is read, and the same text when that is written', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryPriceBook, async (book) => {
        const text = writePrices(book);
        const read = await readPrices(text);
        expect(read).toEqual({ ok: true, book });
        expect(read.ok && writePrices(read.book)).toBe(text);
      }),
    );
  });

  it('puts each price on a line of its own', () => {
    const lines = writePrices(smallBook).split('\n');
    expect(lines).toContain(
      '    { "material": "pex", "size": "3/4", "perFoot": "0.85", "hoursPerFoot": 0.03 },',
    );
    expect(lines.filter((line) => line.startsWith('    { '))).toHaveLength(3 + 5 + 4);
    expect(lines.at(-1)).toBe('');
  });

  it('writes fields in one order, whatever the order in the book', () => {
    const reversed = Object.fromEntries(Object.entries(smallBook).reverse()) as unknown as typeof smallBook;
    expect(writePrices(reversed)).toBe(writePrices(smallBook));
  });
});
