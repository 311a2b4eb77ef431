import type { Cited } from '../../tables/table.ts';
import { units } from '../../tables/units/definitions.ts';

/** A table value as printed, with its place in the table. */
export function citedValue(cited: Cited): string {
  return `${citedPlace(cited)}: ${`${cited.printed} ${units[cited.unit].symbol}`.trim()}`;
}

/** Title, row and column of a table value, or the point of a curve. */
export function citedPlace({ table, row, column }: Cited): string {
  const point = table.kind === 'curve' ? `at ${row} ${units[table.x].symbol}`.trim() : row;
  return [table.title, point, column].filter((part) => part !== undefined).join(', ');
}
