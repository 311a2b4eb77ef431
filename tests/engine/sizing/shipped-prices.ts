import { indexPrices, type PriceIndex } from '../../../engine/index.ts';
import { readPrices } from '../../../server/document/read-prices.ts';
import { exampleText } from '../../examples/open-example.ts';

/** The invented price book that ships, ready to price. */
export async function shippedPrices(): Promise<PriceIndex> {
  const read = await readPrices(exampleText('prices/invented-2026.json'));
  if (!read.ok) throw new Error(read.problems.join('; '));
  return indexPrices(read.book);
}
