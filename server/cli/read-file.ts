import { open } from 'node:fs/promises';
import { fileLimits } from '../document/file-limits.ts';
import { cleanText } from '../words/clean-text.ts';
import { shortenTo } from '../words/display-width.ts';
import { type Refusal, refuse } from './outcome.ts';

/** What a command may read beside files. */
export interface CliInput {
  readonly stdin: AsyncIterable<Uint8Array>;
}

/** How a file is named in sentences. */
export function placeName(place: string): string {
  return place === '-' ? 'standard input' : shortenTo(cleanText(place), 80);
}

/**
 * The bytes of a file, or of standard input for `-`; a file over the limit is refused by its size, unread.
 *
 * @param what the document in the reader's words, for the sentences
 */
export async function readFile(
  place: string,
  { stdin }: CliInput,
  what = 'job',
): Promise<Uint8Array | Refusal> {
  const name = placeName(place);
  try {
    if (place === '-') return await readUpToLimit(stdin, name, what);
    const file = await open(place);
    try {
      const stat = await file.stat();
      if (stat.isDirectory()) return refuse(`${name} is a directory; expected a ${what} file`);
      if (stat.size > fileLimits.bytes) return tooLarge(name, `${(stat.size / 1e6).toFixed(1)} MB`, what);
      return await readUpToLimit(file.createReadStream({ autoClose: false }), name, what);
    } finally {
      await file.close();
    }
  } catch (error) {
    return refuse(`${name} ${whyUnread(error)}; expected a ${what} file that can be read`);
  }
}

async function readUpToLimit(
  chunks: AsyncIterable<Uint8Array>,
  name: string,
  what: string,
): Promise<Uint8Array | Refusal> {
  const kept: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of chunks) {
    size += chunk.byteLength;
    if (size > fileLimits.bytes) return tooLarge(name, `more than ${fileLimits.bytes / 1e6} MB`, what);
    kept.push(chunk);
  }
  return Buffer.concat(kept);
}

function tooLarge(name: string, size: string, what: string): Refusal {
  return refuse(`${name} has ${size}; expected a ${what} of at most ${fileLimits.bytes / 1e6} MB`);
}

function whyUnread(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  switch (code) {
    case 'ENOENT':
      return 'does not exist';
    case 'EACCES':
    case 'EPERM':
      return 'may not be read by you';
    case 'EISDIR':
      return 'is a directory';
    case 'ENOTDIR':
      return 'does not exist: part of its path is no directory';
    case 'ENAMETOOLONG':
      return 'is longer than a file name may be';
    case 'ELOOP':
      return 'is a link that leads back to itself';
    default:
      return `cannot be read (${code === '' ? 'unknown reason' : code})`;
  }
}
