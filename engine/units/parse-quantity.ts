import type { Quantity, QuantityDimension } from '../job/job.ts';
import { expectedQuantity, limits, withinLimits } from './limits.ts';
import type { MathUnit } from './math-unit.ts';
import { MathUnitClass } from './math-unit.ts';
import { numberPattern, plainSigns, readNumber } from './read-number.ts';
import { shorten } from './shorten.ts';
import { findSpelling } from './spellings.ts';

export type ParsedQuantity =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly problem: string };

const longestText = 60;

const siUnits: { readonly [dimension in QuantityDimension]: MathUnit } = {
  pressure: new MathUnitClass(null, 'Pa'),
  'pressure gradient': new MathUnitClass(null, 'Pa/m'),
  flow: new MathUnitClass(null, 'm^3/s'),
  length: new MathUnitClass(null, 'm'),
  velocity: new MathUnitClass(null, 'm/s'),
  temperature: new MathUnitClass(null, 'K'),
  'flow coefficient': new MathUnitClass(null, 'Cv'),
};

const feetAndInches = new RegExp(
  `^(${numberPattern}) ?(?:'|ft\\.?|feet|foot) ?[-,]? ?(${numberPattern}) ?(?:"|in\\.?|inch(?:es)?)$`,
  'i',
);
const numberAndUnit = new RegExp(`^(${numberPattern}) ?(.*)$`);

/** A job repeats its quantities; beyond this many different ones the memory starts anew. */
const mostRemembered = 5000;
const remembered = new Map<string, ParsedQuantity>();

/**
 * Reads a quantity as the trade writes it: `62 psi`, `4.2 bar`, `12 ft 6 in`, `12'-6"`, `6-1/2 in`, `-4 ft`.
 * One number and one unit, or feet and inches; nothing is evaluated.
 *
 * @returns the text, without the space around it, beside its SI value; or one sentence that says what came and what
 * was expected. Values beyond {@link limits} are refused.
 */
export function parseQuantity(text: string, dimension: QuantityDimension): ParsedQuantity {
  const key = `${dimension}\n${text}`;
  const known = remembered.get(key);
  if (known !== undefined) return known;
  const parsed = read(text, dimension);
  if (text.length <= longestText) {
    if (remembered.size >= mostRemembered) remembered.clear();
    remembered.set(key, parsed);
  }
  return parsed;
}

function read(text: string, dimension: QuantityDimension): ParsedQuantity {
  const refuse = (what: string): ParsedQuantity => ({
    ok: false,
    problem: `${shorten(text)} ${what}; expected ${expectedQuantity(dimension)}`,
  });
  if (text.trim() === '') return refuse('is empty');
  if (text.length > longestText) return refuse(`is longer than ${longestText} characters`);
  const plain = plainSigns(text);
  const negative = plain.startsWith('-');
  const unsigned = plain.replace(/^[+-] ?/, '');

  const terms: [number, string][] = [];
  const pair = feetAndInches.exec(unsigned);
  const single = numberAndUnit.exec(unsigned);
  if (pair !== null) {
    const inches = readNumber(pair[2]!);
    if (inches >= 12) return refuse('has 12 inches or more after the feet');
    terms.push([readNumber(pair[1]!), 'ft'], [inches, 'in']);
  } else if (single !== null) {
    const word = single[2]!;
    if (word === '') return refuse('has no unit');
    terms.push([readNumber(single[1]!), word]);
  } else {
    return refuse(
      /^cv ?\d/i.test(unsigned) ? 'has its unit before the number' : 'does not begin with a number',
    );
  }

  let si = 0;
  for (const [value, word] of terms) {
    const spelling = findSpelling(word);
    if (spelling === undefined) return refuse(unknownUnit(word, dimension));
    const unit = new MathUnitClass(value * (spelling.scale ?? 1), spelling.expression);
    if (!unit.equalBase(siUnits[dimension])) return refuse(`is ${kindOf(unit)}`);
    if (Number.isNaN(value)) return refuse('has a fraction over 0');
    const signed = negative ? -value : value;
    si += new MathUnitClass(signed * (spelling.scale ?? 1), spelling.expression).toNumeric(
      siUnits[dimension],
    );
  }
  if (!withinLimits(si, dimension)) {
    const { least, most, unit } = limits[dimension];
    return refuse(`is not within ${least} to ${most} ${unit}`);
  }
  return { ok: true, quantity: { typed: text.trim(), si } };
}

function unknownUnit(word: string, dimension: QuantityDimension): string {
  if (/^e[+-]?\d/i.test(word)) return 'is written with a power of ten';
  if (/^[.,]?\d|^,/.test(word)) return 'has a comma or a second number in it';
  if (/^[a-z]+$/i.test(word) && MathUnitClass.isValuelessUnit(word)) {
    const unit = new MathUnitClass(null, word);
    if (!unit.equalBase(siUnits[dimension])) return `is ${kindOf(unit)}`;
  }
  return `has the unknown unit ${shorten(word)}`;
}

/** `a pressure`, or what the unit measures by mathjs's own list of kinds. */
function kindOf(unit: MathUnit): string {
  for (const [dimension, si] of Object.entries(siUnits)) {
    if (unit.equalBase(si)) return `a ${dimension}`;
  }
  const kind = Object.entries(MathUnitClass.BASE_UNITS).find(([, base]) =>
    unit.dimensions.every((power, index) => power === (base.dimensions[index] ?? 0)),
  );
  if (kind === undefined) return 'in a unit of another kind';
  const name = kind[0].toLowerCase().replaceAll('_', ' ');
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}
