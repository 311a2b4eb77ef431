import type { Flow, Piece } from './flow.ts';
import { type Mark, moved } from './marks.ts';

/** What stands on each page, from the upper left corner of its room. */
export type Pages = readonly (readonly Mark[])[];

/**
 * Sets flows one below the other on pages of one height. A flow that is to stay whole and does not fit in what is left
 * of a page goes to the next; one that fits on no page is broken between its pieces, tied ones kept together, and its
 * head stands again on each page.
 *
 * @param room height of a page; a piece that is higher stands on a page by itself and is cut off by none
 */
export function paginate(flows: readonly Flow[], room: number): Pages {
  const pages: Mark[][] = [[]];
  let y = 0;
  const turn = (): void => {
    pages.push([]);
    y = 0;
  };
  const place = (piece: Piece): void => {
    pages.at(-1)!.push(...piece.marks.map((mark) => moved(mark, 0, y)));
    y += piece.height;
  };
  for (const flow of flows) {
    const height = heightOf(flow.pieces);
    const before = y === 0 ? 0 : flow.before;
    const fits = y + before + height <= room;
    if (!fits && y > 0 && flow.whole && height <= room) turn();
    else y += before;
    let placed = false;
    for (const together of chunks(flow.pieces)) {
      if (y > 0 && y + heightOf(together) > room) {
        turn();
        if (placed && flow.again !== undefined) place(flow.again);
      }
      for (const piece of together) place(piece);
      placed = true;
    }
  }
  return pages;
}

/** Pieces that no page break may part. */
function* chunks(pieces: readonly Piece[]): Generator<readonly Piece[]> {
  let together: Piece[] = [];
  for (const piece of pieces) {
    together.push(piece);
    if (piece.tied === true) continue;
    yield together;
    together = [];
  }
  if (together.length > 0) yield together;
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { height }) => sum + height, 0);
}
