import { shorten } from '../units/shorten.ts';
import type { Words } from './words.ts';

/** One word of a line: in small letters without a trailing comma, and where it stood. */
export interface LineWord {
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

/** A line cut into words. */
export interface Line {
  readonly text: string;
  readonly words: readonly LineWord[];
}

/** What was read at a place, and the place behind it; or a sentence that names the word and what was expected. */
export type Part<T> =
  | { readonly ok: true; readonly value: T; readonly next: number }
  | { readonly ok: false; readonly problem: string };

/** Cuts a line at its spaces; commas behind words are dropped. */
export function cutIntoWords(text: string): Line {
  const words = [...text.matchAll(/\S+/g)].map(({ 0: found, index }) => {
    const bare = found.replace(/,+$/, '');
    return { word: bare.toLowerCase(), start: index, end: index + bare.length };
  });
  return { text, words: words.filter(({ word }) => word !== '') };
}

/** The text from word `from` up to word `to`, as it was typed. */
export function textBetween(line: Line, from: number, to: number): string {
  const first = line.words[from];
  const last = line.words[to - 1];
  return first === undefined || last === undefined ? '' : line.text.slice(first.start, last.end);
}

/** The sentence for a word that fits nowhere, or for a line that ends too soon. */
export function stumble(
  line: Line,
  at: number,
  expected: string,
): { readonly ok: false; readonly problem: string } {
  const typed = textBetween(line, at, at + 1);
  const found = typed === '' ? 'the line ends' : `${shorten(typed)} stands`;
  return { ok: false, problem: `${found} where ${expected} was expected` };
}

/** All spellings of a list, and how many words the longest has. */
export interface Phrases<Id extends string> {
  readonly ids: ReadonlyMap<string, Id>;
  readonly longest: number;
}

/** Every spelling of a list of words by its id, in small letters as {@link matchPhrase} looks them up. */
export function phrasesOf<Id extends string>(words: Words<Id>): Phrases<Id> {
  const ids = new Map<string, Id>();
  for (const [id, spellings] of Object.entries(words) as [Id, readonly string[]][]) {
    for (const spelling of spellings) ids.set(spelling.toLowerCase(), id);
  }
  return { ids, longest: Math.max(...[...ids.keys()].map((phrase) => phrase.split(' ').length)) };
}

/** The longest phrase that stands at word `at`; `plain` strips an ending from the phrase's last word first. */
export function matchPhrase<Id extends string>(
  line: Line,
  at: number,
  { ids, longest }: Phrases<Id>,
  plain: (word: string) => readonly string[] = (word) => [word],
): { readonly id: Id; readonly next: number } | undefined {
  for (let next = Math.min(at + longest, line.words.length); next > at; next--) {
    const words = line.words.slice(at, next).map(({ word }) => word);
    const last = words.pop() ?? '';
    for (const ending of plain(last)) {
      const id = ids.get([...words, ending].join(' '));
      if (id !== undefined) return { id, next };
    }
  }
  return undefined;
}

/** A whole number without sign from `least` to `most`, or undefined. */
export function wholeNumber(word: string | undefined, least: number, most: number): number | undefined {
  if (word === undefined || !/^\d{1,6}$/.test(word)) return undefined;
  const value = Number(word);
  return value >= least && value <= most ? value : undefined;
}
