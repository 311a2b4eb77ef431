import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { writeBackup } from '../backup/write-backup.ts';
import { sqliteFile } from '../storage/connect-sqlite.ts';
import { connectStore, isPostgresPlace, storePlace } from '../storage/database.ts';
import { shownPlace, tellStoreFault } from '../storage/tell-store-fault.ts';
import type { Call } from './command.ts';
import { keptWords } from './kept-words.ts';
import { type Outcome, refuse } from './outcome.ts';
import { placeName } from './read-file.ts';

/** `hightap backup FILE`: all that the store holds, as it is at one moment, in one file. */
export async function backup({ words, values }: Call): Promise<Outcome> {
  const file = words[0]!;
  const place = values.get('store') ?? storePlace(process.env);
  if (!isPostgresPlace(place) && !existsSync(join(place, sqliteFile))) {
    return refuse(`there is no store in ${shownPlace(place)}; nothing was written`);
  }
  if (existsSync(file)) return refuse(`${placeName(file)} is there already; expected the name of a new file`);
  try {
    const store = await connectStore(place);
    try {
      const rows = await writeBackup(store, file, new Date());
      return { is: 'text', code: 0, lines: [`${placeName(file)}: ${keptWords(rows)}`] };
    } finally {
      await store.destroy();
    }
  } catch (error) {
    const why = fileFault(error, file) ?? tellStoreFault(error, place);
    if (why === undefined) throw error;
    return refuse(why);
  }
}

/** Why the backup's own file cannot be written; undefined where the fault is another. */
function fileFault(error: unknown, file: string): string | undefined {
  if (!(error instanceof Error && 'path' in error && 'code' in error)) return undefined;
  return `${placeName(file)} cannot be written (${String(error.code)}); expected a file in a folder that you may write to`;
}
