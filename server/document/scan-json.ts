import { shorten } from '../../engine/units/shorten.ts';
import { fileLimits } from './file-limits.ts';

interface Container {
  readonly keys: Set<string> | undefined;
  /** Where we are in it: the field's name or the entry's number. */
  at: string | number;
  count: number;
}

/** What may stand next. */
const wanted = {
  value: 'a value',
  'value or end': 'a value or "]"',
  key: 'a field name in double quotes',
  'key or end': 'a field name in double quotes or "}"',
  colon: '":"',
  'comma or end': '"," or the end of the list or object',
  nothing: 'the end of the file',
} as const;
type Wanted = keyof typeof wanted;

const literal = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const space = /[ \t\r\n]*/y;
const dangerousKeys = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Walks JSON text without building anything, and finds what JSON.parse passes over in silence or tells without a
 * place: the line and column of the first error, fields given twice, names that would reach into an object's
 * prototype, nesting and lists beyond {@link fileLimits}. No recursion, so that depth costs no stack.
 *
 * @param what the document that the text should hold, for the sentences
 * @returns problems, one sentence each; with none, JSON.parse will read the text
 */
export function scanJson(text: string, what = 'job'): string[] {
  const problems: string[] = [];
  const stack: Container[] = [];
  let want: Wanted = 'value';
  let at = skipSpace(text, 0);
  while (at < text.length) {
    const character = text[at]!;
    const top = stack[stack.length - 1];
    if (want === 'colon' && character === ':') {
      want = 'value';
      at++;
    } else if (want === 'comma or end' && character === ',') {
      want = top!.keys === undefined ? 'value' : 'key';
      at++;
    } else if (character === ']' && top !== undefined && top.keys === undefined && /end/.test(want)) {
      stack.pop();
      want = stack.length === 0 ? 'nothing' : 'comma or end';
      at++;
    } else if (character === '}' && top?.keys !== undefined && /end/.test(want)) {
      stack.pop();
      want = stack.length === 0 ? 'nothing' : 'comma or end';
      at++;
    } else if (character === '"' && /key/.test(want)) {
      const end = endOfString(text, at);
      if (end < 0) return [...problems, broken(text, -end, 'the end of the text in double quotes')];
      const problem = enterKey(text.slice(at, end), stack, what);
      if (problem !== undefined) problems.push(problem);
      if (problems.length >= fileLimits.problemsTold) return problems;
      want = 'colon';
      at = end;
    } else if (/value/.test(want)) {
      if (top !== undefined && top.keys === undefined) {
        top.at = top.count++;
        if (top.count > fileLimits.entriesOfList) {
          stack.pop();
          return [...problems, `${placeOf(stack, what)} has more than ${fileLimits.entriesOfList} entries`];
        }
      }
      if (character === '{' || character === '[') {
        stack.push({ keys: character === '{' ? new Set() : undefined, at: '', count: 0 });
        if (stack.length > fileLimits.depth) {
          return [
            ...problems,
            `${position(text, at)}: nested deeper than the ${fileLimits.depth} levels that a ${what} may have`,
          ];
        }
        want = character === '{' ? 'key or end' : 'value or end';
        at++;
      } else {
        const end = character === '"' ? endOfString(text, at) : endOfLiteral(text, at);
        if (end < 0) return [...problems, broken(text, -end, 'the end of the text in double quotes')];
        if (end === at) return [...problems, broken(text, at, wanted[want])];
        want = stack.length === 0 ? 'nothing' : 'comma or end';
        at = end;
      }
    } else {
      return [...problems, broken(text, at, wanted[want])];
    }
    at = skipSpace(text, at);
  }
  if (want !== 'nothing') problems.push(broken(text, text.length, wanted[want]));
  return problems;
}

/** Notes a field's name in its object; a sentence where it is there already or may not be. */
function enterKey(quoted: string, stack: readonly Container[], what: string): string | undefined {
  const key = quoted.includes('\\') ? String(JSON.parse(quoted)) : quoted.slice(1, -1);
  const top = stack[stack.length - 1]!;
  const place = placeOf(stack.slice(0, -1), what);
  const twice = top.keys!.has(key);
  top.keys!.add(key);
  top.at = key;
  if (dangerousKeys.has(key)) return `${place} has the field ${shorten(key)}, which no ${what} may have`;
  if (twice) return `${place} has the field ${shorten(key)} twice; expected it once`;
  if (top.keys!.size === fileLimits.fieldsOfObject + 1) {
    return `${place} has more than ${fileLimits.fieldsOfObject} fields`;
  }
  return undefined;
}

function placeOf(containers: readonly Container[], what: string): string {
  if (containers.length === 0) return `the ${what}`;
  const text = containers.map(({ at }) => (typeof at === 'number' ? `[${at}]` : `.${at}`)).join('');
  return text
    .replace(/^\./, '')
    .replace(/[^\w[\].-]/g, '?')
    .slice(0, 120);
}

/** One past the closing quote; negative: the place of what may not stand in a string, or of the text's end. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return -at;
    if (code === 0x5c) {
      const escaped = text[at + 1];
      if (escaped === 'u' && /^[\da-fA-F]{4}$/.test(text.slice(at + 2, at + 6))) at += 5;
      else if (escaped !== undefined && '"\\/bfnrt'.includes(escaped)) at++;
      else return -at;
    }
  }
  return -text.length;
}

function endOfLiteral(text: string, at: number): number {
  literal.lastIndex = at;
  return literal.test(text) ? literal.lastIndex : at;
}

function skipSpace(text: string, at: number): number {
  space.lastIndex = at;
  space.test(text);
  return space.lastIndex;
}

function broken(text: string, at: number, expected: string): string {
  if (at >= text.length)
    return `${position(text, text.length)}: the file ends where ${expected} was expected; it seems cut off`;
  return `${position(text, at)}: ${shorten(text.slice(at, at + 20))} stands where ${expected} was expected`;
}

function position(text: string, at: number): string {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  return `line ${line}, column ${at - before.lastIndexOf('\n')}`;
}
