import type { Cited } from '../../tables/table.ts';
import { units } from '../../tables/units/definitions.ts';
import { citedText } from '../../views/text/citation-text.ts';
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

/** A table value as printed, with its place in the table. */
export function citedValue(cited: Cited): string {
  return `${citedPlace(cited)}: ${`${cited.printed} ${units[cited.unit].symbol}`.trim()}`;
}

/** Title, row and column of a table value, or the point of a curve. */
export function citedPlace({ table, row, column }: Cited): string {
  const point = table.kind === 'curve' ? `at ${row} ${units[table.x].symbol}`.trim() : row;
  return [table.title, point, column].filter((part) => part !== undefined).join(', ');
}
