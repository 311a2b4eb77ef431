import type { Job } from '../job/job.ts';
import { buildNetwork } from '../network/build-network.ts';
import type { Defect } from '../network/defect.ts';
import { changesOfField, changesOfList, type JobChange } from './job-changes.ts';
import { keepApart } from './keep-apart.ts';
import { mergeOrder } from './merge-order.ts';
import { type Rename, renameIn } from './renames.ts';
import {
  type Entry,
  type Fields,
  fieldNames,
  isEntryList,
  isSection,
  sameValue,
  type Way,
} from './things.ts';

/** A place where two changes of one document want different things: what each did there. */
export interface Clash {
  readonly mine: readonly JobChange[];
  readonly theirs: readonly JobChange[];
}

export type Merged =
  /** `renames`: what mine added under an id that theirs took as well, and so has another one now. */
  | { readonly ok: true; readonly job: Job; readonly renames: readonly Rename[] }
  /** `defects`: where nothing clashes by itself, but the two together make no tree. */
  | { readonly ok: false; readonly clashes: readonly Clash[]; readonly defects: readonly Defect[] };

/**
 * Joins two changes of one document: by thing and by field, what only one side changed is taken from it. Two sides
 * that want the same do not clash.
 *
 * @param base the document that both started from
 */
export function mergeJobs(base: Job, mine: Job, theirs: Job): Merged {
  const renames = keepApart(base, mine, theirs);
  const own = renames.reduce(renameIn, mine);
  const clashes: Clash[] = [];
  const job = mergeFields([], asFields(base), asFields(own), asFields(theirs), clashes) as unknown as Job;
  if (clashes.length > 0) return { ok: false, clashes, defects: [] };
  const defects = defectsOf(job, [own, theirs]);
  return defects.length > 0 ? { ok: false, clashes: [], defects } : { ok: true, job, renames };
}

function asFields(job: Job): Fields {
  return job as unknown as Fields;
}

function mergeFields(way: Way, base: Fields, mine: Fields, theirs: Fields, clashes: Clash[]): Fields {
  const fields = fieldNames(mine, theirs).map(
    (field) => [field, mergeField(way, field, base, mine, theirs, clashes)] as const,
  );
  const merged = Object.fromEntries(fields.filter(([, value]) => value !== undefined));
  return 'id' in mine ? { id: mine.id, ...merged } : merged;
}

function mergeField(
  way: Way,
  field: string,
  base: Fields,
  mine: Fields,
  theirs: Fields,
  clashes: Clash[],
): unknown {
  const [was, own, other] = [base[field], mine[field], theirs[field]];
  if (sameValue(was, own) || sameValue(own, other)) return other;
  if (sameValue(was, other)) return own;
  if (isEntryList(was ?? []) && isEntryList(own) && isEntryList(other)) {
    return mergeLists([...way, field], (was ?? []) as readonly Entry[], own, other, clashes);
  }
  // A supply of another kind has other fields: it is taken whole.
  if (isSection(way, was ?? {}) && isSection(way, own) && isSection(way, other) && own.kind === other.kind) {
    return mergeFields([field], (was ?? {}) as Fields, own, other, clashes);
  }
  clashes.push({
    mine: changesOfField(way, field, base, mine),
    theirs: changesOfField(way, field, base, theirs),
  });
  return other;
}

function mergeLists(
  way: Way,
  base: readonly Entry[],
  mine: readonly Entry[],
  theirs: readonly Entry[],
  clashes: Clash[],
): readonly Entry[] {
  const [was, own, other] = [byId(base), byId(mine), byId(theirs)];
  const merged = new Map<string, Entry>();
  for (const id of new Set([...own.keys(), ...other.keys()])) {
    const entry = mergeEntry(way, was.get(id), own.get(id), other.get(id), clashes);
    if (entry !== undefined) merged.set(id, entry);
  }
  const order = mergeOrder([...was.keys()], [...own.keys()], [...other.keys()], new Set(merged.keys()));
  return order.map((id) => merged.get(id)!);
}

function mergeEntry(
  list: Way,
  was: Entry | undefined,
  own: Entry | undefined,
  other: Entry | undefined,
  clashes: Clash[],
): Entry | undefined {
  if (own !== undefined && other !== undefined) {
    const base = was ?? { id: own.id };
    return mergeFields([...list, own.id], base, own, other, clashes) as Entry;
  }
  if (was === undefined) return own ?? other;
  const left = own ?? other;
  if (left === undefined || sameValue(was, left)) return undefined;
  const changes = (now: Entry | undefined) => changesOfList(list, [was], now === undefined ? [] : [now]);
  clashes.push({ mine: changes(own), theirs: changes(other) });
  return left;
}

function byId(list: readonly Entry[]): ReadonlyMap<string, Entry> {
  return new Map(list.map((entry) => [entry.id, entry]));
}

/** Why the chosen scheme, or another one that both sides could build, makes no tree. */
function defectsOf(job: Job, sides: readonly Job[]): readonly Defect[] {
  const builds = (one: Job, scheme: string) =>
    one.schemes.every(({ id }) => id !== scheme) || buildNetwork(one, scheme).ok;
  const others = job.schemes.map(({ id }) => id).filter((id) => id !== job.chosen);
  return [job.chosen, ...others].flatMap((scheme) => {
    const built = buildNetwork(job, scheme);
    if (built.ok) return [];
    const wasBroken = scheme !== job.chosen && !sides.every((side) => builds(side, scheme));
    return wasBroken ? [] : built.defects;
  });
}
