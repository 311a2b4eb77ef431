import { checkBackup } from '../backup/check-backup.ts';
import { BadBackup } from '../backup/read-backup.ts';
import { countKept, isInUse, restoreBackup } from '../backup/restore-backup.ts';
import { connectStore, type Store, storePlace } from '../storage/database.ts';
import { shownPlace, tellStoreFault } from '../storage/tell-store-fault.ts';
import type { Call } from './command.ts';
import { keptWords } from './kept-words.ts';
import { type Outcome, refuse } from './outcome.ts';
import { placeName } from './read-file.ts';

/**
 * `hightap restore FILE`: puts a backup into a store. The file is read to its end, with each document in it, before
 * the store is touched.
 */
export async function restore({ words, values, flags }: Call): Promise<Outcome> {
  const file = words[0]!;
  const place = values.get('store') ?? storePlace(process.env);
  try {
    const checked = await checkBackup(file);
    const store = await connectStore(place);
    try {
      const hindrance = await hindranceTo(store, shownPlace(place), flags.has('replace'));
      if (hindrance !== undefined) return refuse(hindrance);
      await restoreBackup(store, file, checked);
      return { is: 'text', code: 0, lines: [`${shownPlace(place)}: ${keptWords(checked.end.rows)}`] };
    } finally {
      await store.destroy();
    }
  } catch (error) {
    if (error instanceof BadBackup) {
      return refuse(`${placeName(file)} cannot be restored: ${error.message}; the store was left as it was`);
    }
    const why = isMissing(error) ? `there is no file ${placeName(file)}` : tellStoreFault(error, place);
    if (why === undefined) throw error;
    return refuse(why);
  }
}

async function hindranceTo(store: Store, place: string, replace: boolean): Promise<string | undefined> {
  if (await isInUse(store)) return `a server has ${place} open; stop it first`;
  const kept = await countKept(store);
  if (kept === 0 || replace) return undefined;
  return `${place} holds ${kept} jobs and price books already; with --replace all of them are replaced by the backup`;
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'EISDIR');
}
