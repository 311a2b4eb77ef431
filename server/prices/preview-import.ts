import { comparePrices, mergePrices, type PriceChanges } from '../../engine/takeoff/merge-prices.ts';
import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { type PriceLine, priceLines } from '../../engine/takeoff/price-line.ts';
import { decodeText } from '../document/decode-text.ts';
import { fileLimits } from '../document/file-limits.ts';
import { readPrices } from '../document/read-prices.ts';
import type { BadLine, Progress } from './read-price-table.ts';

export interface ImportPreview {
  readonly changes: PriceChanges;
  readonly bad: readonly BadLine[];
  readonly passedOver: readonly string[];
  /** Every good line, for the book that it is read into. */
  readonly lines: readonly PriceLine[];
}

export type PreviewResult =
  | { readonly ok: true; readonly preview: ImportPreview }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Reads a file of prices, a book as JSON or a table as CSV, and says what it would do to a book. Nothing is changed. */
export async function previewImport(
  file: Uint8Array,
  book: PriceBook,
  progress?: Progress,
): Promise<PreviewResult> {
  const decoded = decodeText(file, 'price book');
  if (!decoded.ok) return refuse([`The file cannot be read: ${decoded.problem}.`]);
  if (decoded.text.trimStart().startsWith('{')) return await previewBook(file, book);
  const { readPriceTable } = await import('./read-price-table.ts');
  const read = await readPriceTable(decoded.text, book, progress);
  return read.ok ? preview(book, read.lines, read.bad, read.passedOver) : refuse([read.problem]);
}

async function previewBook(file: Uint8Array, book: PriceBook): Promise<PreviewResult> {
  const read = await readPrices(file);
  if (!read.ok) return refuse(read.problems);
  if (read.book.currency !== book.currency) {
    return refuse([`The file is in ${read.book.currency}; this book is in ${book.currency}.`]);
  }
  if (read.book.invented && !book.invented) {
    return refuse(['The file says that its prices are invented, and this book is not an invented one.']);
  }
  return preview(book, priceLines(read.book), [], []);
}

function preview(
  book: PriceBook,
  lines: readonly PriceLine[],
  bad: readonly BadLine[],
  passedOver: readonly string[],
): PreviewResult {
  const problem = tooMany(mergePrices(book, lines));
  if (problem !== undefined) return refuse([problem]);
  return { ok: true, preview: { changes: comparePrices(book, lines), lines, bad, passedOver } };
}

/** Why a book has more prices than can be kept, or undefined. */
function tooMany(book: PriceBook): string | undefined {
  for (const list of ['pipe', 'fittings', 'devices', 'parts'] as const) {
    const count = book[list]?.length ?? 0;
    if (count > fileLimits.pricesOfList) {
      return `The book would have ${count} prices of ${list}; expected at most ${fileLimits.pricesOfList}.`;
    }
  }
  return undefined;
}

function refuse(problems: readonly string[]): PreviewResult {
  return { ok: false, problems };
}
