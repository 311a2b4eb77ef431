/** After apostrophes of our own, what a spreadsheet would run; these count so that each text is read back as it was. */
const formula = /^'*(?:\s*[=+\-@＝＋－＠]|[\t\r])/;

/**
 * A text that a spreadsheet would run as a formula, with an apostrophe before it: what begins with = + - @ or a full-width
 * form of these, also behind blanks, and what begins with a tab or a carriage return. Every other text as it is.
 */
export function spreadsheetText(text: string): string {
  return formula.test(text) ? `'${text}` : text;
}

/** A text as it was before {@link spreadsheetText} held it. */
export function typedText(held: string): string {
  return held.startsWith("'") && formula.test(held) ? held.slice(1) : held;
}
