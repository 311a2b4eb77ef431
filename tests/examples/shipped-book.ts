import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { readPrices } from '../../server/document/read-prices.ts';

/** The price book that ships. */
export async function shippedBook(): Promise<PriceBook> {
  const path = join(import.meta.dirname, '..', '..', 'examples', 'prices', 'invented-2026.json');
  const read = await readPrices(readFileSync(path));
  if (!read.ok) throw new Error(read.problems.join('; '));
  return read.book;
}
