import { sql } from 'kysely';
import type { Store } from '../storage/database.ts';
import { isPostgres } from '../storage/dialect.ts';
import { holdStore } from '../storage/hold-store.ts';
import { inTransaction } from '../storage/in-transaction.ts';
import { migrate } from '../storage/migrate.ts';
import { storeFault } from '../storage/store-fault.ts';
import type { Row } from './backup-lines.ts';
import type { CheckedBackup } from './check-backup.ts';
import { BadBackup, readBackup } from './read-backup.ts';
import { keptTables, madeAnew } from './tables.ts';

/**
 * Replaces all that a store holds by a backup, in one transaction: where anything fails, the store is as it was. The
 * rows go into tables of the shape that they had, which are then brought to the present one.
 *
 * @param checked what {@link checkBackup} found; a file that is another by now is refused
 */
export async function restoreBackup(store: Store, file: string, checked: CheckedBackup): Promise<void> {
  await inTransaction(store, async (change) => {
    await holdStore(change);
    for (const name of [...keptTables.map((table) => table.name).reverse(), ...madeAnew]) {
      await change.schema.dropTable(name).ifExists().execute();
    }
    await migrate(change, checked.head.changes.at(-1));
    const end = await readBackup(file, {
      head: async () => undefined,
      row: async (table, row) => await insert(change, table, row),
    });
    if (end.sha256 !== checked.end.sha256) throw new BadBackup('it was changed while it was read');
    await migrate(change);
  });
}

async function insert(change: Store, table: string, row: Row): Promise<void> {
  const columns = sql.join(Object.keys(row).map((column) => sql.ref(column)));
  await sql`insert into ${sql.table(table)} (${columns}) values (${sql.join(Object.values(row))})`.execute(
    change,
  );
}

/** How many jobs and price books a store holds, those in the bin too; none where it was never used. */
export async function countKept(store: Store): Promise<number> {
  const present = new Set((await store.introspection.getTables()).map(({ name }) => name));
  let kept = 0;
  for (const name of ['job', 'price_book'].filter((table) => present.has(table))) {
    const { rows } = await sql<{ n: number | string }>`select count(*) as n from ${sql.table(name)}`.execute(
      store,
    );
    kept += Number(rows[0]?.n ?? 0);
  }
  return kept;
}

/** Whether a server has the store open: it would go on with what it remembers of the one before. */
export async function isInUse(store: Store): Promise<boolean> {
  if (isPostgres(store)) {
    const { rows } = await sql`select pid from pg_stat_activity where application_name = 'hightap'
      and datname = current_database() and pid <> pg_backend_pid() and backend_type = 'client backend'`.execute(
      store,
    );
    return rows.length > 0;
  }
  try {
    // SQLite leaves the write-ahead log only when nobody else has the file open.
    await sql`pragma journal_mode = delete`.execute(store);
    await sql`pragma journal_mode = wal`.execute(store);
    return false;
  } catch (error) {
    if (storeFault(error) === 'busy') return true;
    throw error;
  }
}
