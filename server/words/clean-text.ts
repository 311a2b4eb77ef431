/**
 * Text without what could move the cursor, hide or reorder other text: control and format characters, halves of
 * surrogate pairs, line and paragraph separators, variation selectors, and marks stacked higher than any script
 * needs. White space becomes single spaces only where it was a line break or a tab.
 */
export function cleanText(text: string): string {
  return text
    .replace(/[\t\n\r\u2028\u2029]+/g, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]|\p{Variation_Selector}/gu, '')
    .replace(/(\p{M}{3})\p{M}+/gu, '$1');
}
