/**
 * Breaks text into lines no wider than `room`: at spaces, behind a hyphen or slash between two words, and a word that is
 * wider than the room wherever it must. Line breaks in the text are kept; an empty text is one empty line.
 *
 * @param width of a piece of text, in the unit of `room`
 */
export function wrap(text: string, room: number, width: (text: string) => number): string[] {
  return text
    .replaceAll('\t', ' ')
    .split(/\r?\n/)
    .flatMap((paragraph) => wrapParagraph(paragraph, room, width));
}

function wrapParagraph(paragraph: string, room: number, width: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const piece of paragraph.split(/(?<= )|(?<=\p{Ll}{2}[-/–](?=\p{Ll}{2}))/u)) {
    if (width((line + piece).trimEnd()) <= room) {
      line += piece;
      continue;
    }
    if (line.trim() !== '') lines.push(line.trimEnd());
    line = piece;
    while (width(line.trimEnd()) > room) {
      const kept = fitting(line, room, width);
      lines.push(kept);
      line = line.slice(kept.length);
    }
  }
  return [...lines, line.trimEnd()];
}

/** The longest beginning of a word that fits, one character at least. */
function fitting(word: string, room: number, width: (text: string) => number): string {
  let kept = '';
  for (const character of word) {
    if (kept !== '' && width(kept + character) > room) break;
    kept += character;
  }
  return kept;
}
