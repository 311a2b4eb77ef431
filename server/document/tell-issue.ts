import type { z } from 'zod';
import { idPattern } from '../../engine/job/words.ts';
import { shorten } from '../../engine/units/shorten.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/**
 * One sentence for one thing wrong in a document: the place, what came, what was expected.
 * `schemes[0].runs[3] (T4) length: "62 psi" is a pressure; expected a length in ft, in, m or mm, such as "12 ft 6 in"`.
 *
 * @param what the kind of document, for what is wrong with all of it
 */
export function tellIssue(issue: Issue, document: unknown, what = 'job', above: Path = []): string {
  const path = [...above, ...issue.path];
  const place = tellPlace(path, document, what);
  switch (issue.code) {
    case 'custom':
      return `${place}: ${issue.message}`;
    case 'unrecognized_keys': {
      const keys = issue.keys.slice(0, 3).map(shorten).join(', ');
      const more = issue.keys.length > 3 ? ` and ${issue.keys.length - 3} more` : '';
      return `${place}: unknown field ${keys}${more}; expected ${issue.message}`;
    }
    case 'invalid_union': {
      const meant = meantBranch(issue.errors, valueAt(document, path));
      if (meant !== undefined) return meant.map((inner) => tellIssue(inner, document, what, path)).join('\n');
      return tellValue(place, valueAt(document, path), issue.message);
    }
    default:
      return tellValue(place, valueAt(document, path), issue.message);
  }
}

function tellValue(place: string, value: unknown, expected: string): string {
  return value === undefined
    ? `${place} is missing; expected ${expected}`
    : `${place}: ${tellCame(value)} came; expected ${expected}`;
}

function tellCame(value: unknown): string {
  if (typeof value === 'string') return shorten(value);
  if (Array.isArray(value)) return `a list of ${value.length} entries`;
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

/** The shape that the writer had in mind: the one with the fewest fields that are missing or unknown. */
function meantBranch(branches: readonly (readonly Issue[])[], value: unknown): readonly Issue[] | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  let meant: readonly Issue[] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const issues of branches) {
    const strange = issues.reduce((sum, issue) => sum + strangeness(issue, value), 0);
    if (issues.length > 0 && strange < least) {
      least = strange;
      meant = issues;
    }
  }
  return meant;
}

function strangeness(issue: Issue, value: object): number {
  if (issue.code === 'unrecognized_keys') return issue.path.length === 0 ? issue.keys.length : 0;
  return issue.path.length === 1 && valueAt(value, issue.path) === undefined ? 1 : 0;
}

function valueAt(document: unknown, path: Path): unknown {
  let at: unknown = document;
  for (const key of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Record<PropertyKey, unknown>)[key];
  }
  return at;
}

/** `schemes[0].runs[3] (T4) end.type`: the id stands behind the last entry that has one. */
function tellPlace(path: Path, document: unknown, what: string): string {
  if (path.length === 0) return `the ${what}`;
  let named = 0;
  let id = '';
  path.forEach((key, index) => {
    if (typeof key !== 'number') return;
    const found = valueAt(document, [...path.slice(0, index + 1), 'id']);
    if (typeof found !== 'string' || !idPattern.test(found)) return;
    named = index + 1;
    id = found;
  });
  const after = joined(path.slice(named));
  if (named === 0) return after;
  return `${joined(path.slice(0, named))} (${id})${after === '' ? '' : ` ${after}`}`;
}

function joined(path: Path): string {
  return path
    .map((key, index) => (typeof key === 'number' ? `[${key}]` : `${index === 0 ? '' : '.'}${String(key)}`))
    .join('');
}
