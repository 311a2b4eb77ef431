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
  const decoded = decodeText(file, what);
  if (!decoded.ok) return { ok: false, problems: [decoded.problem] };
  const faults = scanJson(decoded.text, what);
  if (faults.length > 0) return { ok: false, problems: faults };

  const raw: unknown = JSON.parse(decoded.text);
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
