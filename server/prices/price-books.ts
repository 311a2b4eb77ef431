import { indexPrices, type PriceIndex } from '../../engine/index.ts';
import { readPrices } from '../document/read-prices.ts';
import type { Store } from '../storage/database.ts';
import { bookOfJob, readPriceBookRow } from '../storage/price-book-store.ts';

/** The id by which the book that ships is addressed; no kept book has it. */
export const shippedId = 'shipped';

/** A price book of an address. */
export interface OpenBook {
  readonly id: string;
  readonly revision: number;
  /** The book that ships is read-only. */
  readonly kept: boolean;
  readonly prices: PriceIndex;
}

export interface PriceBooks {
  readonly shipped: () => Promise<PriceIndex>;
  /** A book by its id, or undefined where there is none. @throws where its kept document cannot be read */
  readonly open: (id: string) => Promise<OpenBook | undefined>;
  /** The prices that a job uses: its own choice, else the book that ships. */
  readonly ofJob: (job: string) => Promise<PriceIndex>;
}

/** Books that stay read, the least lately used giving way. */
const most = 6;

/** The book that ships and those of a store, each read once for each revision. */
export function priceBooks(store: Store, shipped: () => Promise<PriceIndex>): PriceBooks {
  const read = new Map<string, OpenBook>();

  async function open(id: string): Promise<OpenBook | undefined> {
    if (id === shippedId) return { id, revision: 1, kept: false, prices: await shipped() };
    const row = await readPriceBookRow(store, id);
    if (row === undefined) {
      read.delete(id);
      return undefined;
    }
    const before = read.get(id);
    read.delete(id);
    const book =
      before?.revision === row.revision
        ? before
        : { id, revision: row.revision, kept: true, prices: await indexed(row.document) };
    read.set(id, book);
    for (const oldest of read.keys()) {
      if (read.size <= most) break;
      read.delete(oldest);
    }
    return book;
  }

  async function ofJob(job: string): Promise<PriceIndex> {
    const chosen = await bookOfJob(store, job);
    const book = chosen === null ? undefined : await open(chosen);
    return book?.prices ?? (await shipped());
  }

  return { shipped, open, ofJob };
}

async function indexed(document: string): Promise<PriceIndex> {
  const read = await readPrices(document);
  if (!read.ok) throw new Error(`a kept price book cannot be read: ${read.problems.join('; ')}`);
  return indexPrices(read.book);
}
