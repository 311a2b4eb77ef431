/**
 * A piece of a page that is swapped by itself: markup whose root carries `id`. Where `frame` (what the piece is made
 * of, apart from its children) stayed equal, only the changed children are sent.
 */
export interface Part {
  readonly id: string;
  readonly html: string;
  readonly frame?: string;
  readonly children?: readonly Part[];
}
