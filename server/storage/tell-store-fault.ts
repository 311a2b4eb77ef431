import { isPostgresPlace } from './database.ts';
import { NewerStore } from './migrate.ts';
import { storeFault } from './store-fault.ts';

/** A place as it may be shown: of an address no user and no password. */
export function shownPlace(place: string): string {
  if (!isPostgresPlace(place)) return `the folder ${place}`;
  const { hostname = '', port = '', pathname = '' } = URL.canParse(place) ? new URL(place) : {};
  return `the database ${pathname.slice(1)} at ${hostname}${port === '' ? '' : `:${port}`}`;
}

/** Why a store cannot be opened, and what to do about it, in one sentence; undefined where it is no fault of the store. */
export function tellStoreFault(error: unknown, place: string): string | undefined {
  const shown = shownPlace(place);
  if (error instanceof NewerStore) return error.message;
  switch (storeFault(error)) {
    case 'full':
      return `The disk of ${shown} is full, so nothing can be kept there. Make room and start again; what was kept is safe.`;
    case 'read-only':
      return `Hightap may not write in ${shown}. Give it a folder of its own by HIGHTAP_DATA, or the right to write there.`;
    case 'busy':
      return `Another program holds the store in ${shown}. Stop it, or try again when it is done.`;
    case 'gone':
      return `The store in ${shown} does not answer. Start it, or correct DATABASE_URL.`;
    case 'damaged':
      return `The store in ${shown} is damaged or is no store of Hightap. It was left as it is; restore a backup into another folder.`;
    case undefined:
      return undefined;
  }
}
