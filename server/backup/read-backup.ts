import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream';
import { createGunzip } from 'node:zlib';
import type { z } from 'zod';
import { knownChanges } from '../storage/migrate.ts';
import {
  type BackupEnd,
  type BackupHead,
  backupVersion,
  endLine,
  headLine,
  type Row,
  rowLine,
  rowOf,
} from './backup-lines.ts';
import { keptTables } from './tables.ts';

/** A file that is no backup, or not whole; its message completes "it cannot be restored: ...". */
export class BadBackup extends Error {}

/** What a backup holds, as it is read. */
export interface BackupReader {
  readonly head: (head: BackupHead) => Promise<void>;
  readonly row: (table: string, row: Row) => Promise<void>;
}

/**
 * Reads a backup from its head to its end, row by row.
 *
 * @returns its end, when the check sum and the counts agree with what was read
 * @throws a {@link BadBackup}, or the file's own error where it cannot be read
 */
export async function readBackup(file: string, reader: BackupReader): Promise<BackupEnd> {
  const hash = createHash('sha256');
  const counts = new Map<string, number>();
  let headed = false;
  let end: BackupEnd | undefined;
  for await (const line of linesOf(file)) {
    if (end !== undefined) throw new BadBackup('something follows its end');
    const value = parsed(line);
    const closing = endLine.safeParse(value);
    if (closing.success) {
      end = closing.data.end;
      continue;
    }
    hash.update(line).update('\n');
    if (!headed) {
      await reader.head(headOf(value));
      headed = true;
      continue;
    }
    const row = checked(rowLine, value, 'a line is no row');
    if (!keptTables.some(({ name }) => name === row.table)) {
      throw new BadBackup(`it has a table ${row.table}, which is unknown`);
    }
    counts.set(row.table, (counts.get(row.table) ?? 0) + 1);
    await reader.row(row.table, rowOf(row));
  }
  if (end === undefined) throw new BadBackup('its end is missing');
  if (end.sha256 !== hash.digest('hex')) throw new BadBackup('its check sum is wrong');
  const told = Object.entries(end.rows).filter(([table, rows]) => rows !== (counts.get(table) ?? 0));
  if (told.length > 0) throw new BadBackup(`rows of ${told.map(([table]) => table).join(', ')} are missing`);
  return end;
}

function headOf(value: unknown): BackupHead {
  const head = checked(headLine, value, 'it has no head of a backup');
  const unknown = head.changes.find((change) => !knownChanges.includes(change));
  if (head.version > backupVersion || unknown !== undefined) {
    throw new BadBackup('it was written by a newer Hightap; use that version');
  }
  return head;
}

function checked<Value>(schema: z.ZodType<Value>, value: unknown, otherwise: string): Value {
  const read = schema.safeParse(value);
  if (!read.success) throw new BadBackup(otherwise);
  return read.data;
}

function parsed(line: Buffer): unknown {
  try {
    return JSON.parse(line.toString('utf8'));
  } catch {
    throw new BadBackup('a line is no JSON');
  }
}

/** Many times the largest document; a file that unpacks to one endless line is given up there. */
const longestLine = 256 * 1024 * 1024;

async function* linesOf(file: string): AsyncGenerator<Buffer, void> {
  const unzipped = pipeline(createReadStream(file), createGunzip(), () => undefined);
  let rest: Buffer[] = [];
  let held = 0;
  try {
    for await (const chunk of unzipped as AsyncIterable<Buffer>) {
      let from = 0;
      for (let to = chunk.indexOf(10); to >= 0; to = chunk.indexOf(10, from)) {
        yield Buffer.concat([...rest, chunk.subarray(from, to)]);
        rest = [];
        held = 0;
        from = to + 1;
      }
      rest.push(chunk.subarray(from));
      held += chunk.length - from;
      if (held > longestLine) throw new BadBackup('a line of it is longer than any document');
    }
    if (held > 0) yield Buffer.concat(rest);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code.startsWith('Z_')) throw new BadBackup('it is no gzip file, or is cut short or damaged');
    throw error;
  }
}
