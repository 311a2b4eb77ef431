import { randomBytes } from 'node:crypto';
import type { PriceBook } from '../../engine/takeoff/price-book.ts';
import { type PreviewResult, previewImport } from './preview-import.ts';

/** A file that was uploaded and waits to be confirmed. */
export interface WaitingImport {
  readonly token: string;
  readonly book: string;
  /** Of the book when the file came. */
  readonly revision: number;
  readonly since: number;
  /** From 0 to 1. */
  share: number;
  lines: number;
  /** Undefined while the file is read. */
  result: PreviewResult | undefined;
  readonly done: Promise<void>;
}

export interface WaitingImports {
  readonly start: (
    file: Uint8Array,
    book: string,
    revision: number,
    now: Date,
    prices: PriceBook,
  ) => WaitingImport;
  readonly find: (token: string, book: string, now: Date) => WaitingImport | undefined;
  readonly forget: (token: string) => void;
}

/** Previews are kept in memory: so many, and so long. */
const most = 8;
const minutes = 60;

/** Previews between the upload and the confirmation; nothing of them is in the store. */
export function waitingImports(): WaitingImports {
  const waiting = new Map<string, WaitingImport>();

  function start(
    file: Uint8Array,
    book: string,
    revision: number,
    now: Date,
    prices: PriceBook,
  ): WaitingImport {
    const token = randomBytes(18).toString('base64url');
    const started: WaitingImport = {
      token,
      book,
      revision,
      since: now.getTime(),
      share: 0,
      lines: 0,
      result: undefined,
      done: Promise.resolve().then(() => read(started, file, prices)),
    };
    waiting.set(token, started);
    for (const oldest of waiting.keys()) {
      if (waiting.size <= most) break;
      waiting.delete(oldest);
    }
    return started;
  }

  function find(token: string, book: string, now: Date): WaitingImport | undefined {
    const found = waiting.get(token);
    if (found === undefined || found.book !== book) return undefined;
    if (now.getTime() - found.since <= minutes * 60_000) return found;
    waiting.delete(token);
    return undefined;
  }

  return { start, find, forget: (token) => void waiting.delete(token) };
}

async function read(waiting: WaitingImport, file: Uint8Array, prices: PriceBook): Promise<void> {
  try {
    waiting.result = await previewImport(file, prices, (share, lines) => {
      waiting.share = share;
      waiting.lines = lines;
    });
  } catch {
    waiting.result = {
      ok: false,
      problems: ['Something went wrong inside Hightap while the file was read; nothing was changed.'],
    };
  }
}
