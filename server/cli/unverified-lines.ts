import type { Cited } from '../../tables/table.ts';
import { citedText } from '../../views/text/citation-text.ts';
import { citedValue } from '../words/cited-words.ts';
import { wrap } from './wrap.ts';

/** In a few words, for beside a result; empty where every value was verified. */
export function restsOn(unverified: readonly Cited[]): string {
  const { length } = unverified;
  if (length === 0) return '';
  return `rests on ${length} ${length === 1 ? 'value' : 'values'} from memory or common practice`;
}

/** The values that nobody could compare with a document, each with where it is said to stand. */
export function unverifiedLines(unverified: readonly Cited[]): string[] {
  if (unverified.length === 0) return [];
  return [
    ...wrap(`This path ${restsOn(unverified)}; check these before you rely on it:`),
    ...unverified.flatMap((cited) => wrap(`${citedValue(cited)}. ${citedText(cited)}`, '  - ')),
    '',
  ];
}
