import type { PriceBook } from '../../../engine/index.ts';
import { priceLines } from '../../../engine/takeoff/price-line.ts';
import { pricesCsv } from '../../../server/prices/prices-csv.ts';

/** A table of so many prices: those of a book, and devices of other names. */
export function manyPrices(book: PriceBook, count: number): string {
  const more = count - priceLines(book).length;
  const others = Array.from({ length: more }, (_, at) => {
    return { device: 'other', size: `Pump ${at}`, each: `${at}.50`, hours: 0.25 } as const;
  });
  return pricesCsv({ ...book, devices: [...book.devices, ...others] });
}
