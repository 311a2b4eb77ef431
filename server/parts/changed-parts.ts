import { type Branch, markupOf, type Part } from '../../views/part.ts';

/** One thing to be done to a page so that it shows what is now. */
export type Change =
  | { readonly what: 'replace'; readonly part: Part }
  | { readonly what: 'text'; readonly id: string; readonly text: string }
  | { readonly what: 'remove'; readonly id: string }
  /** Behind the row `after`, or first in `list`. */
  | {
      readonly what: 'insert';
      readonly list: string;
      readonly after?: string;
      readonly rows: readonly Part[];
    };

/** What an edit changed; of a piece that kept its frame, only that of its children. */
export function changedParts(before: readonly Part[], after: readonly Part[]): readonly Change[] {
  const known = new Map(before.map((part) => [part.id, part]));
  const changes: Change[] = [];
  for (const part of after) {
    const old = known.get(part.id);
    if (old !== part) changes.push(...(old === undefined ? [replace(part)] : changesOf(old, part)));
  }
  return changes;
}

function replace(part: Part): Change {
  return { what: 'replace', part };
}

function changesOf(old: Part, part: Part): readonly Change[] {
  if ('children' in part && 'children' in old) {
    if (part.frame === old.frame) return changedParts(old.children, part.children);
    const rows = part.list === true ? changedRows(old, part) : undefined;
    if (rows !== undefined) return rows;
  }
  if ('text' in part && 'text' in old) {
    return part.text === old.text ? [] : [{ what: 'text', id: part.id, text: part.text }];
  }
  return markupOf(part) === markupOf(old) ? [] : [replace(part)];
}

/**
 * A list that gained, lost or moved rows: those between the rows that stayed at its head and at its foot are taken
 * out and put in anew. `undefined` where so few stayed that the whole list is less.
 */
function changedRows(old: Branch, now: Branch): readonly Change[] | undefined {
  const rows = now.children;
  const least = Math.min(rows.length, old.children.length);
  const sameAt = (at: number, oldAt: number) => rows[at]?.id === old.children[oldAt]?.id;
  let head = 0;
  while (head < least && sameAt(head, head)) head++;
  let foot = 0;
  while (foot < least - head && sameAt(rows.length - 1 - foot, old.children.length - 1 - foot)) foot++;
  if (head + foot < least / 2 || head + foot === 0) return undefined;
  const gone = old.children.slice(head, old.children.length - foot);
  const come = rows.slice(head, rows.length - foot);
  const after = rows[head - 1]?.id;
  const stayed = (from: readonly Part[]) => [...from.slice(0, head), ...from.slice(from.length - foot)];
  return [
    ...gone.map(({ id }): Change => ({ what: 'remove', id })),
    ...(come.length === 0
      ? []
      : [
          {
            what: 'insert',
            list: now.id,
            ...(after === undefined ? {} : { after }),
            rows: come,
          } as const,
        ]),
    ...changedParts(stayed(old.children), stayed(rows)),
  ];
}
