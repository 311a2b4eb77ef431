import type { JobChange, Subject } from '../../engine/compare/job-changes.ts';
import { fieldWord, spaced, valueWord } from './field-words.ts';

/** A longer value is cut at its end. */
const mostOfValue = 60;

/** What fits on one line of a list of revisions. */
const mostOfSummary = 140;

/**
 * Changes in words, a sentence for each thing that changed: `Run ER: 1 becomes 3/4, length 18 ft becomes 20 ft`.
 *
 * @param chosen id of the scheme whose runs need no more than their name
 */
export function changeSentences(changes: readonly JobChange[], chosen: string): readonly string[] {
  const sentences: string[] = [];
  let last: string | undefined;
  for (const change of changes) {
    const about = subjectText(change.subject, chosen);
    const isField = change.change === 'field';
    if (isField && about === last) sentences.push(`${sentences.pop()}, ${changeWords(change)}`);
    else sentences.push(`${about}${isField ? ':' : ''} ${changeWords(change)}`);
    last = isField ? about : undefined;
  }
  return sentences;
}

/** The changes of one revision on one line; of many the first, and how many more there are. */
export function changeSummary(changes: readonly JobChange[], chosen: string): string {
  const [first = 'Nothing changed', ...others] = changeSentences(changes, chosen);
  const more = others.length === 0 ? '' : `; and ${others.length} more`;
  return `${clip(first, mostOfSummary - more.length)}${more}`;
}

function changeWords(change: JobChange): string {
  switch (change.change) {
    case 'added':
      return change.words === undefined ? 'added' : `added: ${change.words}`;
    case 'removed':
      return change.words === undefined ? 'taken out' : `taken out: ${change.words}`;
    case 'renamed':
      return `was called ${change.from}`;
    case 'moved':
      return 'moved in its list';
    case 'reordered':
      return 'in another order';
    case 'field':
      return fieldWords(change);
  }
}

function fieldWords({ field, before, after }: Extract<JobChange, { change: 'field' }>): string {
  const word = fieldWord(field);
  const named = word === '' ? '' : `${word} `;
  const show = (value: string) => clip(valueWord(field, value), mostOfValue);
  if (before === undefined) return after === undefined ? `${named}changed` : `${named}${show(after)} added`;
  if (after === undefined) return `${named}${show(before)} left out`;
  // Two texts may differ only behind where they are cut.
  return show(before) === show(after)
    ? `${word === '' ? spaced(field) : word} changed`
    : `${named}${show(before)} becomes ${show(after)}`;
}

const things: Readonly<Record<string, string>> = {
  fixtures: 'Fixture',
  levels: 'Level',
  groups: 'Group',
  schemes: 'Scheme',
  runs: 'Run',
  risers: 'Riser',
};

/** `Run ER`, `Fixture Rain shower (SH)`, `Supply`; what a later release adds by its key in the file. */
function subjectText({ way, list, name }: Subject, chosen: string): string {
  const last = way.at(-1);
  if (last === undefined) return 'Job';
  const elsewhere = way.length > 2 && way[0] === 'schemes' && way[1] !== chosen ? ` of scheme ${way[1]}` : '';
  if (list === undefined) return `${capital(spaced(last))}${elsewhere}`;
  const called = name === undefined ? last : `${clip(name, mostOfValue)} (${last})`;
  return `${things[list] ?? capital(spaced(list))} ${called}${elsewhere}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function clip(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
