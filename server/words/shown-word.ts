import { cleanText } from './clean-text.ts';
import { shortenTo } from './display-width.ts';

/** A word from the command line as it is shown in a sentence. */
export function shownWord(word: string): string {
  return shortenTo(cleanText(word), 40);
}
