import type { FittingCount, LossPoint, RunEnd } from '../job/job.ts';
import { printEnd, printFittings } from '../job/print-run-line.ts';
import { type Fields, isFields } from './things.ts';

/**
 * The value of a field in the words in which it was typed: `18 ft`, `2 ells 1 tee`, `to RAIN hot`; undefined where
 * the field is absent.
 */
export function valueWords(field: string, value: unknown): string | undefined {
  if (value === undefined) return undefined;
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return listWords(field, value);
  if (!isFields(value)) return String(value);
  if (typeof value.typed === 'string') return value.typed;
  return field === 'end' ? endWords(value as unknown as RunEnd) : fieldsWords(value);
}

function listWords(field: string, list: readonly unknown[]): string {
  if (list.length === 0) return 'none';
  if (field === 'fittings') return printFittings(list as readonly FittingCount[]);
  return list.map((entry) => valueWords('', entry)).join('; ');
}

/** An end as the shorthand says it, with the maker's points, which the shorthand leaves out. */
function endWords(end: RunEnd): string {
  const curve: readonly LossPoint[] = 'curve' in end && end.curve !== undefined ? end.curve : [];
  const points = curve.map(({ flow, loss }) => `${loss.typed} at ${flow.typed}`);
  return points.length === 0 ? printEnd(end) : `${printEnd(end)}, which loses ${points.join(', ')}`;
}

/** Every field by its name: `level L1, x 3 ft, y 4 ft`. */
function fieldsWords(fields: Fields): string {
  return Object.entries(fields)
    .filter(([, value]) => value !== undefined)
    .map(([field, value]) => `${field} ${valueWords(field, value)}`)
    .join(', ');
}
