/** Where a revision stands in the tree: a parent always has a lower number than what was made from it. */
export interface RevisionLink {
  readonly number: number;
  readonly parent: number | null;
}

/** A revision and those that it was made from, back to the first known. */
export function lineOf(links: readonly RevisionLink[], number: number): readonly number[] {
  const parents = new Map(links.map((link) => [link.number, link.parent]));
  const line: number[] = [];
  for (let at: number | null | undefined = number; at != null && parents.has(at); at = parents.get(at)) {
    line.push(at);
  }
  return line;
}

/** The latest revision that two revisions have both been made from, or that is one of them. */
export function commonAncestor(links: readonly RevisionLink[], a: number, b: number): number | undefined {
  const others = new Set(lineOf(links, b));
  return lineOf(links, a).find((number) => others.has(number));
}

/** The first step on the way from a revision to one that was made from it; undefined where it is the same or no other. */
export function stepTowards(links: readonly RevisionLink[], from: number, to: number): number | undefined {
  const line = lineOf(links, to);
  const at = line.indexOf(from);
  return at > 0 ? line[at - 1] : undefined;
}
