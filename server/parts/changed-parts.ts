import { markupOf, type Part } from '../../views/part.ts';

/** The parts that an edit changed; of a piece that kept its frame, only those of its children. */
export function changedParts(before: readonly Part[], after: readonly Part[]): readonly Part[] {
  const known = new Map(before.map((part) => [part.id, part]));
  const changed: Part[] = [];
  for (const part of after) {
    const old = known.get(part.id);
    if (old === undefined) {
      changed.push(part);
    } else if ('children' in part && 'children' in old && part.frame === old.frame) {
      changed.push(...changedParts(old.children, part.children));
    } else if (markupOf(part) !== markupOf(old)) {
      changed.push(part);
    }
  }
  return changed;
}

/** A part as htmx swaps it out of band: the element of the same id is replaced. */
export function outOfBand(part: Part): string {
  const html = markupOf(part);
  const mark = ` id="${part.id}"`;
  const at = html.indexOf(mark);
  if (at < 0 || at > html.indexOf('>')) throw new Error(`the root of part ${part.id} does not carry its id`);
  return `${html.slice(0, at)} hx-swap-oob="true"${html.slice(at)}`;
}
