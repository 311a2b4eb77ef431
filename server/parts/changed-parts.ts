import type { Part } from '../../views/part.ts';

/** The parts whose markup an edit changed; of a list that kept its rows, only the changed rows. */
export function changedParts(before: readonly Part[], after: readonly Part[]): readonly Part[] {
  const known = new Map(before.map((part) => [part.id, part]));
  const changed: Part[] = [];
  for (const part of after) {
    const old = known.get(part.id);
    if (old === undefined || old.html === part.html) {
      if (old === undefined) changed.push(part);
      continue;
    }
    if (part.children !== undefined && old.children !== undefined && part.frame === old.frame) {
      changed.push(...changedParts(old.children, part.children));
    } else {
      changed.push(part);
    }
  }
  return changed;
}

/** A part as htmx swaps it out of band: the element of the same id is replaced. */
export function outOfBand({ id, html }: Pick<Part, 'id' | 'html'>): string {
  const mark = ` id="${id}"`;
  const at = html.indexOf(mark);
  if (at < 0 || at > html.indexOf('>')) throw new Error(`the root of part ${id} does not carry its id`);
  return `${html.slice(0, at)} hx-swap-oob="true"${html.slice(at)}`;
}
