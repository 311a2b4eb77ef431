import { cleanText } from '../words/clean-text.ts';
import { beginningThatFits, displayWidth } from '../words/display-width.ts';

/** Columns of a page of text; no line is wider. */
export const pageWidth = 100;

/**
 * A text as lines of at most {@link pageWidth} columns, broken between words, and inside a word only where it is
 * wider than a line.
 *
 * @param first what stands before the first line
 * @param rest what stands before the others; as many spaces as `first` is wide where it is left out
 */
export function wrap(
  text: string,
  first = '',
  rest: string = ' '.repeat(displayWidth(cleanText(first))),
): string[] {
  const lines: string[] = [];
  let line = cleanText(first);
  let bare = true;
  for (const word of wordsOf(cleanText(text), pageWidth - displayWidth(rest))) {
    const joined = bare ? `${line}${word}` : `${line} ${word}`;
    if (displayWidth(joined) <= pageWidth) line = joined;
    else {
      lines.push(line);
      line = `${rest}${word}`;
    }
    bare = false;
  }
  return [...lines, line].map((one) => one.trimEnd());
}

function wordsOf(text: string, most: number): string[] {
  return text
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) => {
      const parts: string[] = [];
      let left = word;
      while (displayWidth(left) > most) {
        const part = beginningThatFits(left, most);
        parts.push(part);
        left = left.slice(part.length);
      }
      return [...parts, left];
    });
}
