import type { Paper } from '../../views/sheet.ts';

/** Points, 1/72 inch: the sheet of paper and the room for text on it. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  /** Of the room between the margins. */
  readonly roomWidth: number;
  readonly roomHeight: number;
}

const sheets = { letter: [612, 792], a4: [595.28, 841.89] } as const;
const side = 54;
const head = 64;
const foot = 62;

/** A sheet of paper with margins that leave room for a binder and for a reviewer's pencil. */
export function pageSize(paper: Paper): PageSize {
  const [width, height] = sheets[paper];
  return {
    width,
    height,
    left: side,
    top: head,
    roomWidth: width - 2 * side,
    roomHeight: height - head - foot,
  };
}
