import type { Font, Measure } from './marks.ts';

/** Widths of words in em, by font and word: most words of one sheet stand in the next as well. */
const known: Record<Font, Map<string, number>> = {
  regular: new Map(),
  semibold: new Map(),
  italic: new Map(),
};
const mostKnown = 50_000;

/**
 * Measures text with the fonts of a document, word by word as they are painted, so that no letter is drawn closer
 * over a space; a width grows with the size, so one measuring serves every size.
 */
export function measuredBy(doc: PDFKit.PDFDocument): Measure {
  return (text, { font, size }) => {
    let width = 0;
    for (const word of text.split(/(?<= )/)) width += widthOfWord(doc, font, word);
    return width * size;
  };
}

function widthOfWord(doc: PDFKit.PDFDocument, font: Font, word: string): number {
  const widths = known[font];
  const before = widths.get(word);
  if (before !== undefined) return before;
  if (widths.size >= mostKnown) widths.clear();
  const width = doc.font(font, 1000).widthOfString(word) / 1000;
  widths.set(word, width);
  return width;
}
