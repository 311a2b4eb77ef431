/**
 * What a job's document is made of, told by shape alone, so that a field of a later release is compared and merged
 * like those of today: things that have fields of their own, lists of things, and values that are taken whole.
 */

/** The way to a thing from the top of the document: `[]` the job, `['schemes', 'S1', 'runs', 'ER']` a run. */
export type Way = readonly string[];

export type Fields = { readonly [field: string]: unknown };

/** A thing of a list, found again by its id. */
export type Entry = Fields & { readonly id: string };

export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether a value is a list of things with ids, no id twice; an empty list is one. */
export function isEntryList(value: unknown): value is readonly Entry[] {
  if (!Array.isArray(value)) return false;
  const entries: readonly unknown[] = value;
  const ids = new Set<unknown>();
  for (const entry of entries) {
    if (!isFields(entry) || typeof entry.id !== 'string') return false;
    ids.add(entry.id);
  }
  return ids.size === entries.length;
}

/** Whether the value of a field is a section of the job, such as its supply: an object at the top, no quantity. */
export function isSection(way: Way, value: unknown): value is Fields {
  return way.length === 0 && isFields(value) && !('typed' in value);
}

/** The fields of several states of a thing, in the order in which they first appear; its id is none of them. */
export function fieldNames(...states: readonly Fields[]): readonly string[] {
  return [...new Set(states.flatMap((state) => Object.keys(state)))].filter((field) => field !== 'id');
}

/** Whether two values say the same in a document. A quantity is what was typed; an absent field is `undefined`. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((entry, index) => sameValue(entry, other[index]));
  }
  if (!isFields(one) || !isFields(other)) return false;
  if (typeof one.typed === 'string' && typeof other.typed === 'string') return one.typed === other.typed;
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every((key) =>
    sameValue(one[key], other[key]),
  );
}
