/**
 * A piece of a page that is swapped by itself: markup whose root carries `id`. Of a piece with `children` only the
 * changed children are sent, where its `frame` (all that its markup depends on apart from them) stayed equal; of a
 * list, only the rows that came, went or moved. A piece with `text` is nothing but that text in an element, and
 * only the text is sent.
 */
export type Part = Leaf | Branch | Text;

export interface Leaf {
  readonly id: string;
  readonly html: string;
}

export interface Text {
  readonly id: string;
  readonly text: string;
  readonly html: () => string;
}

export interface Branch {
  readonly id: string;
  readonly frame: string;
  readonly children: readonly Part[];
  /** The children stand in the root one after the other and nothing else does. */
  readonly list?: boolean;
  /** Put together only when it is asked for: an edit seldom needs it. */
  readonly html: () => string;
}

export function markupOf(part: Part): string {
  return typeof part.html === 'string' ? part.html : part.html();
}
