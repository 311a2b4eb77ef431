/**
 * Characters that a terminal shows two columns wide: the ranges of East Asian Width W and F (Unicode Standard
 * Annex 11) that hold letters and signs, and pictures shown as such by default.
 */
const wide =
  /[\u1100-\u115f\u2329\u232a\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{16fe0}-\u{18d08}\u{1aff0}-\u{1b2fb}\u{1f200}-\u{1f265}\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;
const narrow = /^[\x20-\x7e]*$/;
const mark = /^\p{M}$/u;

/** Columns that cleaned text takes in a terminal. */
export function displayWidth(text: string): number {
  if (narrow.test(text)) return text.length;
  let width = 0;
  for (const character of text) width += characterWidth(character);
  return width;
}

function characterWidth(character: string): number {
  if (mark.test(character)) return 0;
  return wide.test(character) ? 2 : 1;
}

/** The longest beginning of a text that fits `width` columns, marks kept with their letter. */
export function beginningThatFits(text: string, width: number): string {
  let taken = 0;
  let kept = '';
  for (const character of text) {
    taken += characterWidth(character);
    if (taken > width) return kept;
    kept += character;
  }
  return kept;
}

/** A text in at most `width` columns, the cut shown by `…`. */
export function shortenTo(text: string, width: number): string {
  return displayWidth(text) <= width ? text : `${beginningThatFits(text, width - 1).trimEnd()}…`;
}
