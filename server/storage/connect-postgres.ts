import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import type { Schema } from './schema.ts';

/** How the servers of Hightap are known to the database. */
export const postgresClient = 'hightap';

const seconds = 1000;

/**
 * A pool of connections to PostgreSQL, each made when it is asked for, so that a database that went away is found
 * again when it is back. No request waits for ever: not for a connection, for an answer, nor for a row that a server
 * holds which died on the way.
 */
export function connectPostgres(address: string): Kysely<Schema> {
  const pool = new pg.Pool({
    connectionString: address,
    application_name: postgresClient,
    max: 10,
    connectionTimeoutMillis: 5 * seconds,
    statement_timeout: 20 * seconds,
    query_timeout: 25 * seconds,
    idle_in_transaction_session_timeout: 20 * seconds,
    idleTimeoutMillis: 30 * seconds,
    keepAlive: true,
  });
  // A connection that breaks while nobody waits on it, in the pool or between two statements, would end the process if
  // nobody listened. The pool drops it, and the request that needs the database tells of it.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return new Kysely<Schema>({ dialect: new PostgresDialect({ pool }) });
}
