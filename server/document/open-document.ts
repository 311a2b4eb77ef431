import { shorten } from '../../engine/units/shorten.ts';
import { decodeText } from './decode-text.ts';
import type { RawJob } from './migrate.ts';
import { scanJson } from './scan-json.ts';

export type Opened =
  | { readonly ok: true; readonly raw: RawJob }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Opens a file as far as every document is alike: UTF-8 JSON within the limits, an object with the mark of its format.
 *
 * @param format the mark that the field of that name must have
 * @param what the document in the reader's words, for the sentences
 */
export function openDocument(file: string | Uint8Array, format: string, what: string): Opened {
  const parsed = parseFile(file, what);
  return parsed.ok ? openObject(parsed.value, format, what) : parsed;
}

export type Parsed =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problems: readonly string[] };

/** The value of a file of UTF-8 JSON within the limits. */
export function parseFile(file: string | Uint8Array, what: string): Parsed {
  const decoded = decodeText(file, what);
  if (!decoded.ok) return { ok: false, problems: [decoded.problem] };
  const faults = scanJson(decoded.text, what);
  if (faults.length > 0) return { ok: false, problems: faults };
  return { ok: true, value: JSON.parse(decoded.text) };
}

/** Opens a document that was parsed already. */
export function openObject(raw: unknown, format: string, what: string): Opened {
  if (!isObject(raw)) {
    return { ok: false, problems: [`the file holds no object in braces; expected a ${what}`] };
  }
  if (raw.format === format) return { ok: true, raw };
  const came =
    raw.format === undefined
      ? 'format is missing'
      : `format: ${shorten(typeof raw.format === 'string' ? raw.format : JSON.stringify(raw.format))} came`;
  return { ok: false, problems: [`${came}; expected "${format}", the mark of a ${what} file`] };
}

function isObject(value: unknown): value is RawJob {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
