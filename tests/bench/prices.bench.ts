import { previewImport } from '../../server/prices/preview-import.ts';
import { shippedPrices } from '../../server/prices/shipped-prices.ts';
import { manyPrices } from '../server/prices/many-prices.ts';
import { figure, median } from './figure.ts';

/** Reading a table of ten thousand prices into a book as far as its preview: text, checks and comparison. */
export async function benchPrices(short: boolean): Promise<void> {
  const { book } = await shippedPrices();
  const file = new TextEncoder().encode(manyPrices(book, 10_000));
  const times: number[] = [];
  for (let round = 0; round < (short ? 3 : 15); round++) {
    const start = performance.now();
    const read = await previewImport(file, book);
    times.push(performance.now() - start);
    if (!read.ok || read.preview.lines.length !== 10_000 || read.preview.bad.length > 0) {
      throw new Error('the bench did not read ten thousand prices');
    }
  }
  figure('price_import_10000_ms', median(times), 'ms');
}
