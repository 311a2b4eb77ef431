import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import { migrate } from './migrate.ts';
import type { Schema } from './schema.ts';

export type Store = Kysely<Schema>;

/**
 * Opens `hightap.sqlite` in a folder, makes both where they are missing, and brings the store to the present shape.
 *
 * @param folder `:memory:` for a store that lives as long as its process
 */
export async function openStore(folder: string): Promise<Store> {
  const inMemory = folder === ':memory:';
  if (!inMemory) mkdirSync(folder, { recursive: true });
  const database = new Database(inMemory ? ':memory:' : join(folder, 'hightap.sqlite'));
  if (!inMemory) {
    // WAL keeps readers and the writer apart; with it NORMAL loses no committed change when the process dies.
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = NORMAL');
    database.pragma('busy_timeout = 2000');
  }
  const store = new Kysely<Schema>({ dialect: new SqliteDialect({ database }) });
  await migrate(store);
  return store;
}
