import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import type { Schema } from './schema.ts';

/** The store's file in its folder. */
export const sqliteFile = 'hightap.sqlite';

/** How long a write waits for that of another process. */
const patience = 5000;

/** Opens `hightap.sqlite` in a folder, and makes both where they are missing; `:memory:` for a store without a file. */
export function connectSqlite(folder: string): Kysely<Schema> {
  const inMemory = folder === ':memory:';
  if (!inMemory) mkdirSync(folder, { recursive: true });
  const database = new Database(inMemory ? ':memory:' : join(folder, sqliteFile));
  if (!inMemory) {
    database.pragma(`busy_timeout = ${patience}`);
    // The write-ahead log keeps readers and the writer apart, those of several processes too. FULL writes it to the
    // disk before a save is acknowledged, so that not even a loss of power takes it back; NORMAL would let that happen.
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
  }
  return new Kysely<Schema>({
    dialect: new SqliteDialect({
      database: {
        close: () => void database.close(),
        // SQLite itself rolls back where the disk is full. A second rollback would fail, and hide why the first came.
        prepare: (sql) => database.prepare(sql === 'rollback' && !database.inTransaction ? 'select 1' : sql),
      },
    }),
  });
}
