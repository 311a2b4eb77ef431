import { randomBytes } from 'node:crypto';
import { inject } from 'vitest';
import { openStore, type Store } from '../../../server/storage/database.ts';

/** An empty store: in memory, or where the run has a PostgreSQL in a schema of its own there. */
export async function testStore(): Promise<Store> {
  return await openStore(await testPlace());
}

/** Where {@link testStore} makes its store. */
export async function testPlace(): Promise<string> {
  const postgres: string | undefined = inject('postgres');
  if (postgres === undefined) return ':memory:';
  const { default: pg } = await import('pg');
  const schema = `s${randomBytes(8).toString('hex')}`;
  const client = new pg.Client({ connectionString: postgres });
  await client.connect();
  await client.query(`create schema ${schema}`);
  await client.end();
  return `${postgres}?options=${encodeURIComponent(`-c search_path=${schema}`)}`;
}
