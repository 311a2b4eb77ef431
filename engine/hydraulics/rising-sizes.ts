import { seldomStocked } from '../../tables/pipe/nominal-size.ts';
import { nominalInches } from './nominal-inches.ts';

/** The nominal sizes of a table's rows in rising order; the order of an object's keys is another. */
export function risingSizes(rows: Readonly<Record<string, unknown>>): string[] {
  return Object.keys(rows).sort((one, other) => nominalInches(one) - nominalInches(other));
}

/** The sizes that may be proposed in place of one, smallest first: larger, and usually in stock. */
export function largerSizes(rows: Readonly<Record<string, unknown>>, size: string): string[] {
  return risingSizes(rows).filter(
    (other) => nominalInches(other) > nominalInches(size) && !seldomStocked.has(other),
  );
}
