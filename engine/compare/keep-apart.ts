import type { Job } from '../job/job.ts';
import { nextId } from '../job/next-id.ts';
import { type Rename, renameIn } from './renames.ts';
import { type Entry, sameValue, type Way } from './things.ts';

/**
 * New ids for what `mine` added under an id that `theirs` gave to something else: two people who each add a run both
 * get the next free name. What both added alike is one thing.
 */
export function keepApart(base: Job, mine: Job, theirs: Job): readonly Rename[] {
  const renames: Rename[] = [];
  let own = mine;
  // What names a fixture is renamed with it, so runs are looked at last.
  const lists: Way[] = [['levels'], ['groups'], ['fixtures'], ['schemes']];
  for (const { id } of theirs.schemes) lists.push(['schemes', id, 'runs']);
  for (const list of lists) {
    const found = renamesOf(list, entriesOf(base, list), entriesOf(own, list), entriesOf(theirs, list));
    renames.push(...found);
    own = found.reduce(renameIn, own);
  }
  return renames;
}

function entriesOf(job: Job, [top, scheme]: Way): readonly Entry[] {
  const list =
    scheme === undefined
      ? job[top as 'levels' | 'groups' | 'fixtures' | 'schemes']
      : (job.schemes.find(({ id }) => id === scheme)?.runs ?? []);
  return list as unknown as readonly Entry[];
}

function renamesOf(
  list: Way,
  base: readonly Entry[],
  mine: readonly Entry[],
  theirs: readonly Entry[],
): readonly Rename[] {
  if (mine === base || theirs === base) return [];
  const had = new Set(base.map(({ id }) => id));
  const others = new Map(theirs.map((entry) => [entry.id, entry]));
  const taken = new Set([...base, ...mine, ...theirs].map(({ id }) => id));
  return mine.flatMap((entry) => {
    const other = others.get(entry.id);
    if (had.has(entry.id) || other === undefined || sameValue(entry, other)) return [];
    const to = nextId(stemOf(entry.id), taken);
    taken.add(to);
    return [{ list, from: entry.id, to }];
  });
}

/** `R` of `R7`, `SH-cold-` of `SH-cold`. */
function stemOf(id: string): string {
  const stem = id.replace(/\d+$/, '');
  return stem === id || stem === '' ? `${id}-` : stem;
}
