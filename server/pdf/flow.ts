import type { Mark } from './marks.ts';

/** What is never broken over two pages: a line, a row of a table, a heading. Marks count from its upper left corner. */
export interface Piece {
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Stays on the page of the piece behind it. */
  readonly tied?: boolean;
}

/** Pieces that belong together, one below the other. */
export interface Flow {
  readonly pieces: readonly Piece[];
  /** Kept on one page where it fits on one. */
  readonly whole: boolean;
  /** Stands again on each further page: the head of a table. */
  readonly again?: Piece;
  /** Room before it, but not at the top of a page. */
  readonly before: number;
}

/** The same flow with a heading that stays on the page of its beginning. */
export function headed(flow: Flow, heading: Piece, before: number): Flow {
  return { ...flow, before, pieces: [{ ...heading, tied: true }, ...flow.pieces] };
}

/** Flows as one that stays whole, with the room that each has before it. */
export function together(flows: readonly Flow[]): Flow {
  const [first, ...others] = flows;
  if (first === undefined) return { pieces: [], whole: true, before: 0 };
  const pieces = others.flatMap(({ pieces: more, before }) => [{ height: before, marks: [] }, ...more]);
  return { pieces: [...first.pieces, ...pieces], whole: true, before: first.before };
}
