import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import { sql } from 'kysely';
import type { Store } from '../storage/database.ts';
import { isPostgres } from '../storage/dialect.ts';
import { type BackupHead, backupVersion, type Row, writeRow } from './backup-lines.ts';
import { type KeptTable, keptTables } from './tables.ts';

/** Rows that are read at once. */
const page = 100;

/**
 * Writes a whole store into a file, as it is at one moment whatever a server saves meanwhile. The file is there when
 * all of it is on the disk, or not at all.
 *
 * @param store of this program's shape or an older one; it is left as it is
 * @returns how many rows of each table were written
 */
export async function writeBackup(
  store: Store,
  file: string,
  now: Date,
): Promise<Readonly<Record<string, number>>> {
  const rows: Record<string, number> = {};
  const partial = `${file}.partial`;
  try {
    // Of the two only PostgreSQL has to be told: a transaction of SQLite always sees one moment.
    const transaction = isPostgres(store)
      ? store.transaction().setIsolationLevel('repeatable read').setAccessMode('read only')
      : store.transaction();
    await transaction.execute(async (snapshot) => {
      const lines = Readable.from(backupLines(snapshot, now, rows));
      await pipeline(lines, createGzip(), createWriteStream(partial, { mode: 0o600 }));
    });
    const written = await open(partial, 'r+');
    await written.sync();
    await written.close();
    await rename(partial, file);
  } catch (error) {
    await rm(partial, { force: true });
    throw error;
  }
  return rows;
}

async function* backupLines(
  snapshot: Store,
  now: Date,
  rows: Record<string, number>,
): AsyncGenerator<string, void> {
  const hash = createHash('sha256');
  const line = (text: string) => {
    hash.update(`${text}\n`);
    return `${text}\n`;
  };
  const changes = await snapshot.selectFrom('migration').select('name').orderBy('name').execute();
  const head: BackupHead = {
    format: 'hightap-backup',
    version: backupVersion,
    changes: changes.map(({ name }) => name),
    made: now.toISOString(),
  };
  yield line(JSON.stringify(head));
  const present = new Set((await snapshot.introspection.getTables()).map(({ name }) => name));
  for (const table of keptTables.filter(({ name }) => present.has(name))) {
    rows[table.name] = 0;
    for await (const row of rowsOf(snapshot, table)) {
      rows[table.name] = (rows[table.name] ?? 0) + 1;
      yield line(writeRow(table.name, row));
    }
  }
  yield `${JSON.stringify({ end: { rows, sha256: hash.digest('hex') } })}\n`;
}

async function* rowsOf(snapshot: Store, { name, key }: KeptTable): AsyncGenerator<Row, void> {
  const columns = sql.join(key.map((column) => sql.ref(column)));
  let after: Row | undefined;
  do {
    const last = after;
    const beyond =
      last === undefined ? sql`` : sql`where (${columns}) > (${sql.join(key.map((column) => last[column]))})`;
    const query = sql<Row>`select * from ${sql.table(name)} ${beyond} order by ${columns} limit ${sql.lit(page)}`;
    const { rows } = await query.execute(snapshot);
    yield* rows;
    after = rows.length < page ? undefined : rows.at(-1);
  } while (after !== undefined);
}
