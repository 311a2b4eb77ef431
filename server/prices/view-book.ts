import type { PriceBook } from '../../engine/index.ts';
import {
  lineFigures,
  lineName,
  lineUnit,
  type PriceLine,
  type PriceList,
  priceLines,
} from '../../engine/takeoff/price-line.ts';
import type { BookHead, BookView, PreviewView, PriceRow } from '../../views/prices.ts';
import type { ImportPreview } from './preview-import.ts';
import { priceColumns } from './price-columns.ts';

/** Rows of one page. */
const perPage = 100;

/** What a reader asks of a book: a list, words that an item must have, a page. */
export interface BookQuestion {
  readonly list: PriceList;
  readonly text: string;
  readonly page: number;
}

export function isPriceList(word: string): word is PriceList {
  return word === 'pipe' || word === 'fittings' || word === 'devices' || word === 'parts';
}

/** The lines of one list of a book, by their places. */
export function listOf(book: PriceBook, list: PriceList): PriceLine[] {
  return priceLines(book).filter((line) => line.list === list);
}

/** The rows of a book that a reader asks for. */
export function viewBook(head: BookHead, { list, text, page }: BookQuestion): BookView {
  const { book } = head;
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const found: PriceRow[] = [];
  for (const [at, line] of listOf(book, list).entries()) {
    const name = lineName(line);
    const lower = name.toLowerCase();
    if (!words.every((word) => lower.includes(word))) continue;
    found.push({ at, name, unit: lineUnit(line), figures: lineFigures(line) });
  }
  const pages = Math.max(1, Math.ceil(found.length / perPage));
  const shown = Math.min(Math.max(1, page), pages);
  return {
    ...head,
    list,
    text,
    counts: {
      pipe: book.pipe.length,
      fittings: book.fittings.length,
      devices: book.devices.length,
      parts: book.parts?.length ?? 0,
    },
    rows: found.slice((shown - 1) * perPage, shown * perPage),
    found: found.length,
    page: shown,
    pages,
    columns: priceColumns,
  };
}

/** A preview in the reader's words. */
export function viewPreview(head: BookHead, token: string, preview: ImportPreview): PreviewView {
  const { added, changed, unchanged, untouched } = preview.changes;
  const named = (line: PriceLine) => ({ name: lineName(line), unit: lineUnit(line) });
  return {
    ...head,
    token,
    added: added.map((line) => ({ ...named(line), figures: lineFigures(line) })),
    changed: changed.map(({ before, after }) => ({
      ...named(after),
      before: lineFigures(before),
      after: lineFigures(after),
    })),
    bad: preview.bad,
    unchanged,
    untouched,
    passedOver: preview.passedOver,
  };
}
