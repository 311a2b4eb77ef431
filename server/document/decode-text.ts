import { fileLimits } from './file-limits.ts';

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: string };

/**
 * The text of a file: UTF-8, with or without a byte order mark, not over the limit of size, not empty.
 *
 * @param what the document that the file should hold, for the sentences
 */
export function decodeText(file: string | Uint8Array, what = 'job'): Decoded {
  const bytes = typeof file === 'string' ? Buffer.byteLength(file) : file.byteLength;
  if (bytes > fileLimits.bytes) {
    const size = (bytes / 1e6).toFixed(1);
    return refuse(`the file has ${size} MB; expected a ${what} of at most ${fileLimits.bytes / 1e6} MB`);
  }
  if (typeof file !== 'string' && looksLikeUtf16(file)) {
    return refuse('the file is UTF-16 text; expected UTF-8');
  }
  let text: string;
  try {
    text =
      typeof file === 'string'
        ? file.replace(/^\uFEFF/, '')
        : new TextDecoder('utf-8', { fatal: true }).decode(file);
  } catch {
    return refuse(`the file holds bytes that are not UTF-8 text; expected a ${what} file in UTF-8`);
  }
  if (text.trim() === '') return refuse(`the file is empty; expected a ${what} file`);
  return { ok: true, text };
}

/** A byte order mark of UTF-16, or the zero beside the first brace that UTF-16 puts there. */
function looksLikeUtf16(file: Uint8Array): boolean {
  const [first, second] = file;
  return (
    (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff) || first === 0 || second === 0
  );
}

function refuse(problem: string): Decoded {
  return { ok: false, problem };
}
