/** A number without its sign: `12`, `0.5`, `.5`, `1/2`, `6-1/2`, `6 1/2`. */
export const numberPattern = '(?:\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d*)?|\\.\\d+)';

/** The value of what {@link numberPattern} matched; NaN where a fraction has no denominator. */
export function readNumber(text: string): number {
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (fraction === null) return Number(text);
  const denominator = Number(fraction[3]);
  return denominator === 0 ? Number.NaN : Number(fraction[1] ?? 0) + Number(fraction[2]) / denominator;
}

const vulgar: { readonly [character: string]: string } = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * Typographic signs as a keyboard has them: primes and quotes for feet and inches, dashes, one-character fractions,
 * no-break spaces. The text as typed is kept elsewhere; this is for reading it.
 */
export function plainSigns(text: string): string {
  return text
    .replace(/[\u2032\u2019\u2018]/g, "'")
    .replace(/[\u2033\u201d\u201c]|''/g, '"')
    .replace(/[\u2212\u2013\u2010\u2011]/g, '-')
    .replace(
      /(\d?)([¼½¾⅛⅜⅝⅞])/g,
      (_, digit: string, sign: string) => `${digit}${digit && ' '}${vulgar[sign]}`,
    )
    .replace(/\s+/g, ' ')
    .trim();
}
