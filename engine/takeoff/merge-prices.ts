import type { PriceBook } from './price-book.ts';
import { lineFigures, lineKey, type PriceLine, priceLines, sameFigures } from './price-line.ts';

/** What lines would do to a book. */
export interface PriceChanges {
  readonly added: readonly PriceLine[];
  readonly changed: readonly { readonly before: PriceLine; readonly after: PriceLine }[];
  readonly unchanged: number;
  /** Prices of the book that no line is about; they stay. */
  readonly untouched: number;
}

/** Compares lines, each of another item, with the prices of a book. */
export function comparePrices(book: PriceBook, lines: readonly PriceLine[]): PriceChanges {
  const before = new Map(priceLines(book).map((line) => [lineKey(line), line]));
  const added: PriceLine[] = [];
  const changed: { before: PriceLine; after: PriceLine }[] = [];
  let unchanged = 0;
  for (const after of lines) {
    const found = before.get(lineKey(after));
    if (found === undefined) added.push(after);
    else if (sameFigures(lineFigures(found), lineFigures(after))) unchanged++;
    else changed.push({ before: found, after });
  }
  return { added, changed, unchanged, untouched: before.size - unchanged - changed.length };
}

/** The book with the prices of lines: one that it has is replaced where it stands, another goes to the end of its list. */
export function mergePrices(book: PriceBook, lines: readonly PriceLine[]): PriceBook {
  const merged = new Map(priceLines(book).map((line) => [lineKey(line), line]));
  for (const line of lines) merged.set(lineKey(line), line);
  return withLines(book, [...merged.values()]);
}

/** The book without one of its prices. */
export function removePrice(book: PriceBook, key: string): PriceBook {
  return withLines(
    book,
    priceLines(book).filter((line) => lineKey(line) !== key),
  );
}

/** The head of a book with these prices and no others. */
export function withLines({ parts: had, ...head }: PriceBook, lines: readonly PriceLine[]): PriceBook {
  const parts = lines.flatMap((line) => (line.list === 'parts' ? [line.price] : []));
  return {
    ...head,
    pipe: lines.flatMap((line) => (line.list === 'pipe' ? [line.price] : [])),
    fittings: lines.flatMap((line) => (line.list === 'fittings' ? [line.price] : [])),
    devices: lines.flatMap((line) => (line.list === 'devices' ? [line.price] : [])),
    ...(had === undefined && parts.length === 0 ? {} : { parts }),
  };
}
