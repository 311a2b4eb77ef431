import { readJob } from '../document/read-job.ts';
import { readPrices } from '../document/read-prices.ts';
import { unpackText } from '../storage/packed-text.ts';
import type { BackupEnd, BackupHead, Row } from './backup-lines.ts';
import { BadBackup, readBackup } from './read-backup.ts';

/** A backup that was read to its end, each of its documents too. */
export interface CheckedBackup {
  readonly head: BackupHead;
  readonly end: BackupEnd;
}

/**
 * Reads a backup and every document in it, and keeps nothing.
 *
 * @throws a {@link BadBackup} that says what is wrong, or the file's own error
 */
export async function checkBackup(file: string): Promise<CheckedBackup> {
  let found: BackupHead | undefined;
  const end = await readBackup(file, {
    head: async (head) => {
      found = head;
    },
    row: checkDocument,
  });
  if (found === undefined) throw new BadBackup('it has no head of a backup');
  return { head: found, end };
}

async function checkDocument(table: string, row: Row): Promise<void> {
  if (!('document' in row)) return;
  const name = `${String(row.job_name ?? row.name)}${table === 'revision' ? `, revision ${row.number}` : ''}`;
  const text = await textOf(row.document, name);
  const read = table === 'price_book' ? await readPrices(text) : await readJob(text);
  if (!read.ok) throw new BadBackup(`the document of ${name} cannot be read: ${read.problems.join('; ')}`);
}

async function textOf(document: unknown, name: string): Promise<string> {
  if (typeof document === 'string') return document;
  try {
    if (document instanceof Uint8Array) return await unpackText(document);
  } catch {
    // Told below.
  }
  throw new BadBackup(`the document of ${name} is damaged`);
}
