import type { Job, Run } from '../job/job.ts';
import { printRunLine } from '../job/print-run-line.ts';
import { findRenames, renameIn } from './renames.ts';
import {
  type Entry,
  type Fields,
  fieldNames,
  isEntryList,
  isSection,
  sameValue,
  type Way,
} from './things.ts';
import { valueWords } from './value-words.ts';

/** What a change is about: the way to it in the document, and its name where it has one. */
export interface Subject {
  readonly way: Way;
  /** The list that it stands in; left out for a section, a list as a whole and the job itself. */
  readonly list?: string;
  readonly name?: string;
}

/** One change from a document to another, each value in the words in which it was typed. */
export type JobChange =
  /** `words` is the run's line; left out where a thing has none. */
  | { readonly change: 'added' | 'removed'; readonly subject: Subject; readonly words?: string }
  /** A run or fixture that only has another id; what names it follows, and is no change of its own. */
  | { readonly change: 'renamed'; readonly subject: Subject; readonly from: string }
  /** A field; `before` or `after` is left out where the field is absent. */
  | {
      readonly change: 'field';
      readonly subject: Subject;
      readonly field: string;
      readonly before?: string;
      readonly after?: string;
    }
  /** One thing stands elsewhere in its list. */
  | { readonly change: 'moved'; readonly subject: Subject }
  /** A list in another order by more than one thing. */
  | { readonly change: 'reordered'; readonly subject: Subject };

/**
 * Everything in which two documents differ, in the order of the document; empty only where they are the same. What
 * an edit left as the same object costs nothing to compare.
 */
export function jobChanges(before: Job, after: Job): readonly JobChange[] {
  const renames = findRenames(before, after);
  const renamed = renames.reduce(renameIn, before);
  return [
    ...renames.map(
      ({ list, from, to, name }): JobChange => ({
        change: 'renamed',
        subject: subjectOf([...list, to], { id: to, name }),
        from,
      }),
    ),
    ...changesOfFields([], renamed as unknown as Fields, after as unknown as Fields),
  ];
}

function changesOfFields(way: Way, before: Fields, after: Fields): JobChange[] {
  return fieldNames(before, after).flatMap((field) => changesOfField(way, field, before, after));
}

export function changesOfField(way: Way, field: string, before: Fields, after: Fields): readonly JobChange[] {
  const was = before[field];
  const is = after[field];
  if (sameValue(was, is)) return [];
  if (isEntryList(was) && isEntryList(is)) return changesOfList([...way, field], was, is);
  if (isSection(way, was) && isSection(way, is)) return changesOfFields([field], was, is);
  const [old, now] = [valueWords(field, was), valueWords(field, is)];
  return [
    {
      change: 'field',
      subject: subjectOf(way, after),
      field,
      ...(old === undefined ? {} : { before: old }),
      ...(now === undefined ? {} : { after: now }),
    },
  ];
}

export function changesOfList(
  way: Way,
  before: readonly Entry[],
  after: readonly Entry[],
): readonly JobChange[] {
  const was = new Map(before.map((entry) => [entry.id, entry]));
  const is = new Map(after.map((entry) => [entry.id, entry]));
  const removed = before.filter(({ id }) => !is.has(id)).map((entry) => cameOrWent('removed', way, entry));
  const others = after.flatMap((entry) => {
    const old = was.get(entry.id);
    if (old === undefined) return [cameOrWent('added', way, entry)];
    return old === entry ? [] : changesOfFields([...way, entry.id], old, entry);
  });
  return [...removed, ...others, ...changeOfOrder(way, before, after)];
}

function cameOrWent(change: 'added' | 'removed', list: Way, entry: Entry): JobChange {
  const subject = subjectOf([...list, entry.id], entry);
  return list.at(-1) === 'runs'
    ? { change, subject, words: printRunLine(entry as unknown as Run) }
    : { change, subject };
}

function changeOfOrder(way: Way, before: readonly Entry[], after: readonly Entry[]): readonly JobChange[] {
  const kept = new Set(after.map(({ id }) => id));
  const had = new Set(before.map(({ id }) => id));
  const was = before.map(({ id }) => id).filter((id) => kept.has(id));
  const is = after.map(({ id }) => id).filter((id) => had.has(id));
  const at = was.findIndex((id, index) => id !== is[index]);
  if (at < 0) return [];
  const without = (list: readonly string[], gone: string) => list.filter((id) => id !== gone);
  const moved = [was[at]!, is[at]!].find((id) => sameValue(without(was, id), without(is, id)));
  if (moved === undefined) return [{ change: 'reordered', subject: { way } }];
  return [{ change: 'moved', subject: subjectOf([...way, moved], after.find(({ id }) => id === moved)!) }];
}

function subjectOf(way: Way, thing: Fields): Subject {
  const list = 'id' in thing ? way.at(-2) : undefined;
  return {
    way,
    ...(list === undefined ? {} : { list }),
    ...(list !== undefined && typeof thing.name === 'string' ? { name: thing.name } : {}),
  };
}
