import { sansWidths } from '../../tables/lettering/sans-widths.ts';
import { grown, lineMeets, textBox } from './box.ts';
import type { Box, Leader, PlacedText, Point, TextRole } from './placed.ts';
import { isFree, type Taken, take, takeSlant } from './taken.ts';
import { textWidth } from './text-width.ts';

/** Size of the texts of a drawing, points. */
export const textSize = 8.5;
/** From one line of a text to the next: as high as a line's box, so that the boxes of two lines do not overlap. */
export const lineStep: number = (sansWidths.ascent + sansWidths.descent) * textSize + 0.01;
/** Clear paper around each text, points. */
const clear = 0.7;

/** A text that wants a place: its wordings, the fullest first, each as lines one under the other. */
export interface WantedText {
  readonly role: TextRole;
  readonly run: number;
  readonly bold: boolean;
  readonly wordings: readonly (readonly string[])[];
  /** Places for a block of lines of this width, the best first. */
  readonly spots: (width: number, lines: number) => readonly Spot[];
}

/** A place for a block of lines: the corner where its first line's box begins. */
export interface Spot {
  /** Left top corner of the block; with `turned`, left bottom, from where the lines read upwards. */
  readonly corner: Point;
  readonly turned: boolean;
  /** Where the text stands so far off that a thin line has to lead to what it names. */
  readonly leader?: readonly [from: Point, to: Point];
}

export interface PlacedTexts {
  readonly texts: PlacedText[];
  readonly leaders: Leader[];
  readonly leftOut: number[];
}

/**
 * Finds a free place for each text in turn, so that the first ones have the choice; what finds none is left out.
 *
 * @param taken pipes and symbols; the texts are added
 * @param symbols boxes over which no leader may go
 */
export function placeTexts(
  wanted: readonly WantedText[],
  taken: Taken,
  symbols: readonly Box[],
): PlacedTexts {
  const placed: PlacedTexts = { texts: [], leaders: [], leftOut: [] };
  const shut = [...symbols];
  for (const want of wanted) {
    const found = firstFree(want, taken, shut);
    if (found === undefined) {
      placed.leftOut.push(want.run);
      continue;
    }
    for (const text of found.texts) {
      take(taken, grown(text.box, clear));
      shut.push(text.box);
      placed.texts.push(text);
    }
    if (found.spot.leader !== undefined) {
      const [from, to] = found.spot.leader;
      takeSlant(taken, from, to);
      placed.leaders.push({ run: want.run, from, to });
    }
  }
  return placed;
}

/** The fullest wording that finds room beside what it names; farther off, with a leader, only where none does. */
function firstFree(want: WantedText, taken: Taken, shut: readonly Box[]) {
  for (const far of [false, true]) {
    for (const lines of want.wordings) {
      const width = Math.max(...lines.map((line) => textWidth(line, textSize, want.bold)));
      for (const spot of want.spots(width, lines.length)) {
        if ((spot.leader !== undefined) !== far) continue;
        const texts = lines.map((line, index) => lineAt(want, line, spot, index));
        if (!texts.every(({ box }) => isFree(taken, grown(box, clear)))) continue;
        const { leader } = spot;
        if (leader === undefined || !shut.some((box) => lineMeets(...leader, box))) return { texts, spot };
      }
    }
  }
  return undefined;
}

function lineAt({ role, run, bold }: WantedText, text: string, spot: Spot, index: number): PlacedText {
  const { corner, turned } = spot;
  const down = sansWidths.ascent * textSize + index * lineStep;
  const start = turned ? { x: corner.x + down, y: corner.y } : { x: corner.x, y: corner.y + down };
  return {
    role,
    run,
    text,
    ...start,
    turned,
    size: textSize,
    bold,
    box: textBox(start, text, textSize, bold, turned),
  };
}
