import { readFile } from 'node:fs/promises';
import { indexPrices, type PriceIndex } from '../../engine/index.ts';
import { readPrices } from '../document/read-prices.ts';

const shippedBook = new URL('../../examples/prices/invented-2026.json', import.meta.url);

let shipped: Promise<PriceIndex> | undefined;

/** The invented book that ships, read once, when the first page asks for a price. */
export function shippedPrices(): Promise<PriceIndex> {
  shipped ??= readShipped();
  return shipped;
}

async function readShipped(): Promise<PriceIndex> {
  const read = await readPrices(await readFile(shippedBook));
  if (!read.ok) throw new Error(`the shipped price book cannot be read: ${read.problems.join('; ')}`);
  return indexPrices(read.book);
}
