import type { Kysely } from 'kysely';
import { connectSqlite } from './connect-sqlite.ts';
import { migrate } from './migrate.ts';
import type { Schema } from './schema.ts';

export type Store = Kysely<Schema>;

/** Where the environment says that the store is: `DATABASE_URL`, else the folder `HIGHTAP_DATA`, else `.data`. */
export function storePlace(environment: NodeJS.ProcessEnv): string {
  const { DATABASE_URL: address = '', HIGHTAP_DATA: folder = '' } = environment;
  return [address, folder].find((place) => place !== '') ?? '.data';
}

/** Whether a place is the address of a PostgreSQL database; else it is a folder. */
export function isPostgresPlace(place: string): boolean {
  return /^postgres(?:ql)?:\/\//.test(place);
}

/**
 * Opens a store, makes it where it is missing, and brings it to the present shape.
 *
 * @param place a folder for SQLite, `:memory:` for a store that lives as long as its process, or `postgres://...`
 * @throws a driver's error, which `store-fault.ts` tells in words
 */
export async function openStore(place: string): Promise<Store> {
  const store = await connectStore(place);
  try {
    await migrate(store);
  } catch (error) {
    await store.destroy();
    throw error;
  }
  return store;
}

/** Connects with a store as it is; its shape may be another than {@link Schema} says. */
export async function connectStore(place: string): Promise<Store> {
  if (!isPostgresPlace(place)) return connectSqlite(place);
  // Loaded only where it is used: a laptop's server has no need of the driver.
  const { connectPostgres } = await import('./connect-postgres.ts');
  return connectPostgres(place);
}
