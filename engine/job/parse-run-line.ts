import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import type { MaterialId } from '../../tables/pipe/names.ts';
import { metricSize } from '../hydraulics/nominal-inches.ts';
import { parseQuantity } from '../units/parse-quantity.ts';
import { shorten } from '../units/shorten.ts';
import { bounds } from './bounds.ts';
import type { FittingCount, Quantity, Run, RunEnd } from './job.ts';
import type { Line, Part } from './line-words.ts';
import { cutIntoWords, matchPhrase, phrasesOf, stumble, textBetween, wholeNumber } from './line-words.ts';
import { parseDevice, parseInlet } from './parse-run-end.ts';
import type { RunFields } from './print-run-line.ts';
import { fittingWords, jointWords, materialWords, sizePattern } from './words.ts';

export type ParsedRunLine =
  | { readonly ok: true; readonly run: RunFields & Pick<Run, 'note'> }
  | { readonly ok: false; readonly problem: string };

/** `previous` is the run that the line replaces: what the line cannot say (note, loss curve) is taken from it. */
export interface RunLineContext {
  readonly previous?: Run;
}

/** `12 ft 6-1/2 in` with every part apart, and some to spare. */
const mostWordsOfQuantity = 8;

/** Saves trying to read words that cannot end a length; what it lets through need not be one. */
const endsLikeLength =
  /(?:['"\u2018\u2019\u201c\u201d\u2032\u2033]|ft|foot|feet|in|inch|inches|m|meters?|metres?)\.?$/;

const materials = phrasesOf(materialWords);
const joints = phrasesOf(jointWords);
const fittings = phrasesOf(fittingWords);

/**
 * Reads a run in trade words: size, material, joint where it is not the usual one, developed length (the risen part
 * included), `up` or `down` how much of it, counted fittings, and `to FIXTURE cold` or `then DEVICE`.
 * `3/4 PEX 18' up 9' 2 ells to RAIN hot`, `20x2.8 PE-X 5.5 m up 2.7 m`; a bare `copper` is type L.
 *
 * @returns the run's fields, or one sentence that names the word it stumbled on and what was expected there
 */
export function parseRunLine(text: string, context: RunLineContext = {}): ParsedRunLine {
  if (text.length > bounds.lineLength) {
    return { ok: false, problem: `the line is longer than ${bounds.lineLength} characters` };
  }
  const line = cutIntoWords(text);
  const size = parseSize(line);
  if (!size.ok) return size;
  const material = matchPhrase(line, size.next, materials);
  if (material === undefined) {
    const known = Object.values(materialWords).map(([first]) => first);
    return stumble(line, size.next, `a material (${known.join(', ')})`);
  }
  const joint = matchPhrase(line, material.next, joints);
  const length = parseLength(line, joint?.next ?? material.next, `the length of the run, such as 18',`);
  if (!length.ok) return length;
  if (length.value.si < 0) {
    return {
      ok: false,
      problem: `${shorten(length.value.typed)} is below zero where the length of the run was expected`,
    };
  }
  const rise = parseRise(line, length.next);
  if (!rise.ok) return rise;
  const counted = parseFittings(line, rise.next);
  if (!counted.ok) return counted;
  const end = parseEnd(line, counted.next, context.previous?.end);
  if (!end.ok) return end;
  if (end.next < line.words.length) return stumble(line, end.next, expectedAfter(rise.value, end.value));
  const note = context.previous?.note;
  return {
    ok: true,
    run: {
      size: wholeSize(size.value, material.id),
      material: material.id,
      ...(joint === undefined ? {} : { joint: joint.id }),
      length: length.value,
      ...(rise.value === undefined ? {} : { rise: rise.value }),
      fittings: counted.value,
      ...(end.value === undefined ? {} : { end: end.value }),
      ...(note === undefined ? {} : { note }),
    },
  };
}

/** `3/4`, `3/4"`, `1-1/4`, `1 1/4`; `20x2.8`, `20 x 2.8`. */
function parseSize(line: Line): Part<string> {
  const [first, second, third] = [0, 1, 2].map((at) =>
    textBetween(line, at, at + 1)
      .replace(/["\u2033\u201d]$/, '')
      .replace(/[X\u00d7]/, 'x'),
  ) as [string, string, string];
  if (/^\d$/.test(first) && /^\d+\/\d+$/.test(second))
    return { ok: true, value: `${first}-${second}`, next: 2 };
  if (second === 'x' && metricSize(`${first}x${third}`) !== undefined)
    return { ok: true, value: `${first}x${third}`, next: 3 };
  if (!sizePattern.test(first)) return stumble(line, 0, 'a pipe size, such as 3/4 or 20x2.8,');
  return { ok: true, value: first, next: 1 };
}

/** Metric pipe of which a material has one wall may be named by its outside diameter alone. */
function wholeSize(size: string, material: MaterialId): string {
  const { rows } = pipeDimensions[material];
  if (Object.hasOwn(rows, size)) return size;
  const [only, ...others] = Object.keys(rows).filter((name) => `${metricSize(name)?.outside}` === size);
  return only !== undefined && others.length === 0 ? only : size;
}

/** The longest stretch of words that reads as a length. */
function parseLength(line: Line, at: number, expected: string): Part<Quantity> {
  for (let to = Math.min(at + mostWordsOfQuantity, line.words.length); to > at; to--) {
    if (!endsLikeLength.test(line.words[to - 1]?.word ?? '')) continue;
    const parsed = parseQuantity(textBetween(line, at, to), 'length');
    if (parsed.ok) return { ok: true, value: parsed.quantity, next: to };
  }
  const first = line.words[at]?.word ?? '';
  if (!/^[-+\u2212]?[.\d]/.test(first)) return stumble(line, at, expected);
  // `18 psi` has a wrong unit, `18 up` has none.
  const next = line.words[at + 1]?.word;
  const alone = /[a-z'"]/.test(first) || next === undefined || /^(?:up|down|rise|to|then|\d.*)$/.test(next);
  const problem = parseQuantity(textBetween(line, at, at + (alone ? 1 : 2)), 'length');
  return problem.ok ? stumble(line, at, expected) : problem;
}

function parseRise(line: Line, at: number): Part<Quantity | undefined> {
  const way = line.words[at]?.word;
  if (way !== 'up' && way !== 'down' && way !== 'rise') return { ok: true, value: undefined, next: at };
  const rise = parseLength(line, at + 1, `a height after ${way}, such as 9',`);
  if (!rise.ok || way === 'rise') return rise;
  const { typed, si } = rise.value;
  if (/^[-+\u2212\u2013\u2010\u2011]/.test(typed)) {
    return stumble(line, at + 1, `a height without a sign after ${way}`);
  }
  const value = way === 'up' ? rise.value : { typed: `-${typed}`, si: 0 - si };
  return { ok: true, value, next: rise.next };
}

function parseFittings(line: Line, start: number): Part<readonly FittingCount[]> {
  const value: FittingCount[] = [];
  let at = start;
  const { least, most } = bounds.fittingCount;
  while (/^\d+$/.test(line.words[at]?.word ?? '')) {
    const count = wholeNumber(line.words[at]?.word, least, most);
    if (count === undefined) return stumble(line, at, `a count of fittings from ${least} to ${most}`);
    const fitting = matchPhrase(line, at + 1, fittings, singular);
    if (fitting === undefined) {
      const known = Object.values(fittingWords).map(([first]) => first);
      return stumble(line, at + 1, `a fitting (${known.join(', ')})`);
    }
    value.push({ kind: fitting.id, count });
    at = fitting.next;
    if (value.length > bounds.fittingsPerRun) {
      return { ok: false, problem: `the line names more than ${bounds.fittingsPerRun} entries of fittings` };
    }
  }
  return { ok: true, value, next: at };
}

/** What a plural may be the plural of: `ells`, `elbows`, `90's`, `45°`. */
function singular(word: string): readonly string[] {
  const plain = word.replace(/°/g, '');
  return [plain, plain.replace(/(?:'|\u2019)?s$/, ''), plain.replace(/es$/, '')];
}

function parseEnd(line: Line, at: number, before: RunEnd | undefined): Part<RunEnd | undefined> {
  const word = line.words[at]?.word;
  if (word === 'to') return parseInlet(line, at + 1);
  if (word === 'then') return parseDevice(line, at + 1, before);
  return { ok: true, value: undefined, next: at };
}

function expectedAfter(rise: Quantity | undefined, end: RunEnd | undefined): string {
  if (end !== undefined) return 'the end of the line';
  return `${rise === undefined ? 'up, down, ' : ''}counted fittings (2 ells), to FIXTURE cold, or then DEVICE`;
}
