/**
 * A piece of a page that is swapped by itself: markup whose root carries `id`. Of a piece with `children` only the
 * changed children are sent, where its `frame` (all that its markup depends on apart from them) stayed equal.
 */
export type Part = Leaf | Branch;

export interface Leaf {
  readonly id: string;
  readonly html: string;
}

export interface Branch {
  readonly id: string;
  readonly frame: string;
  readonly children: readonly Part[];
  /** Put together only when it is asked for: an edit seldom needs it. */
  readonly html: () => string;
}

export function markupOf(part: Part): string {
  return typeof part.html === 'string' ? part.html : part.html();
}
