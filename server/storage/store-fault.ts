/** Why a store does not do what it was asked. */
export type StoreFault =
  /** The disk has no room. */
  | 'full'
  /** The file or its folder may only be read. */
  | 'read-only'
  /** Another process holds it for longer than anybody waits. */
  | 'busy'
  /** The database does not answer. */
  | 'gone'
  /** The file is no store, or is damaged. */
  | 'damaged';

/** By the start of SQLite's result codes, https://sqlite.org/rescode.html. */
const sqliteFaults: readonly (readonly [string, StoreFault])[] = [
  ['SQLITE_FULL', 'full'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_PERM', 'read-only'],
  ['SQLITE_CANTOPEN', 'read-only'],
  ['SQLITE_BUSY', 'busy'],
  ['SQLITE_LOCKED', 'busy'],
  ['SQLITE_IOERR', 'gone'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['SQLITE_NOTADB', 'damaged'],
];

/** By the start of PostgreSQL's error codes (its manual, appendix A) and of the network's. */
const otherFaults: readonly (readonly [string, StoreFault])[] = [
  ['53100', 'full'],
  ['ENOSPC', 'full'],
  ['25006', 'read-only'],
  ['EACCES', 'read-only'],
  ['EPERM', 'read-only'],
  ['EROFS', 'read-only'],
  ['08', 'gone'],
  ['57P', 'gone'],
  ['53', 'busy'],
  ['57014', 'busy'],
  ['55P03', 'busy'],
  ['40001', 'busy'],
  ['40P01', 'busy'],
  ['25P03', 'gone'],
  ['ECONN', 'gone'],
  ['EPIPE', 'gone'],
  ['ETIMEDOUT', 'gone'],
  ['EHOSTUNREACH', 'gone'],
  ['ENETUNREACH', 'gone'],
  ['ENOTFOUND', 'gone'],
  ['EAI_AGAIN', 'gone'],
  ['XX001', 'damaged'],
  ['XX002', 'damaged'],
];

/** What the drivers say where they give no code. */
const told: readonly (readonly [RegExp, StoreFault])[] = [
  [/^Connection terminated|^timeout exceeded when trying to connect|^Query read timeout/i, 'gone'],
  [/not queryable|connection error/i, 'gone'],
  // SQLite's SQLITE_CANTOPEN.
  [/Unable to open connection to local database .*: 14/, 'read-only'],
];

/** Why the store failed, where an error is the store's; undefined for any other error. */
export function storeFault(error: unknown): StoreFault | undefined {
  if (!(error instanceof Error)) return undefined;
  if (error instanceof AggregateError)
    return error.errors.map(storeFault).find((fault) => fault !== undefined);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const byCode = [...sqliteFaults, ...otherFaults].find(([start]) => code.startsWith(start));
  return byCode?.[1] ?? told.find(([words]) => words.test(error.message))?.[1];
}
