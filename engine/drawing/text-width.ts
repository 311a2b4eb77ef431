import { type FaceWidths, sansWidths } from '../../tables/lettering/sans-widths.ts';

/** Wider than any letter that the table lacks: a full square and a third. */
const unknown = 1300;

/**
 * Width of one line of text, in the unit of `size`. Letters with accents are as wide as without; what the table
 * lacks is taken wider than any letter, so that text never needs more room than this.
 */
export function textWidth(text: string, size: number, bold: boolean): number {
  const face = bold ? sansWidths.bold : sansWidths.regular;
  let thousandths = 0;
  for (const letter of text.normalize('NFD')) thousandths += letterWidth(letter, face);
  return (thousandths / 1000) * size;
}

function letterWidth(letter: string, face: FaceWidths): number {
  const known = face.ascii[letter.codePointAt(0)! - 32] ?? face.beyond[letter];
  if (known !== undefined) return known;
  return /\p{Mn}/u.test(letter) ? 0 : unknown;
}

/** The text, or as much of its beginning as `width` holds with an ellipsis behind it. */
export function clipText(text: string, width: number, size: number, bold: boolean): string {
  if (textWidth(text, size, bold) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join('').trimEnd()}…`, size, bold) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
